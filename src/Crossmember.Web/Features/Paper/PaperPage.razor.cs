using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Reports;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Paper;

/// <summary>Makes a document in the background, with its progress in view and a way to stop it.</summary>
public sealed partial class PaperPage
{
    /// <summary>Steps smaller than this are not worth sending to a browser.</summary>
    private const double Worthwhile = 0.02;

    private Sheet? _sheet;
    private IReadOnlyList<(string Id, string Title, string Area)> _offered = [];
    private string _what = "", _ending = ".pdf", _paper = "", _said = "";
    private string? _asked;
    private CancellationTokenSource? _making;
    private Step _step;
    private MadePaper? _made;

    [Parameter] public string Id { get; set; } = "";

    [SupplyParameterFromQuery(Name = "in")] public string? In { get; set; }

    [SupplyParameterFromQuery(Name = "instance")] public string? Instance { get; set; }

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    [Inject] private ShopDesk Desk { get; set; } = null!;

    [Inject] private MadePapers Papers { get; set; } = null!;

    [Inject] private TimeProvider Clock { get; set; } = null!;

    [Inject] private NavigationManager Nav { get; set; } = null!;

    private bool IsMaking => _making is not null;

    public void Dispose() => Cancel();

    protected override void OnParametersSet()
    {
        Read();
        if (Instance == _asked || _sheet is null) return;
        _asked = Instance;
        _what = IsOffered(Instance) ? Instance! : "";
    }

    private bool IsOffered(string? what) => _offered.Any(o => o.Id == what) || (what is not null && BuildReport.Find(what) is not null);

    /// <summary>The sheet as it stands now, and what can be made of it.</summary>
    private void Read()
    {
        if (Desk.Open(Id) is not { } open)
        {
            _sheet = null;
            return;
        }
        var shop = Desk.Shop.Shelf.Shop();
        _sheet = (In is { } named ? open.Sheet(named, shop) : null) ?? open.Sheet(BuildGlance.Usual(open, shop), shop)!;
        var living = _sheet.Instances.OfType<InstanceState>().ToList();
        _offered =
        [
            .. living.Select(i => i.Instance.Calculation.About).DistinctBy(a => a.Id).Select(a => (a.Id, a.Title, a.Area)),
            // One instance alone is offered where a link asked for it.
            .. living.Where(i => i.Instance.Id == Instance && Instance.Contains('[', StringComparison.Ordinal)).Select(i => (i.Instance.Id, i.Instance.Id, i.Instance.Calculation.About.Area)),
        ];
    }

    private async Task Make()
    {
        if (IsMaking) return;
        // The page may have lain open for a day: what goes on paper is what stands now.
        Read();
        if (_sheet is not { } sheet) return;
        if (_what.Length > 0 && !IsOffered(_what))
        {
            (_what, _made, _said) = ("", null, "That is not worked out there any more; choose anew.");
            return;
        }
        using var making = new CancellationTokenSource();
        (_making, _made, _said, _step) = (making, null, "", new("beginning", 0));
        var (what, form, measure) = (_what, PaperForm.Of(_ending)!, Viewer.Measure);
        var paper = PageSize.Find(_paper) ?? PageSize.For(measure);
        var imprint = new Imprint(Clock.GetUtcNow(), measure, Desk.Shop.Shelf.Recorded(Id, sheet.Build.Position));
        var progress = new Heard(Tell);
        try
        {
            var printed = await Task.Run(() => form.Write(Compose(sheet, what, imprint), paper, progress, making.Token), making.Token);
            _made = Papers.Keep($"{Id}-{(what.Length > 0 ? what : "sheet")}{form.Ending}", form, printed.Content);
        }
        catch (OperationCanceledException)
        {
            _said = "Stopped; nothing was made.";
        }
        finally
        {
            _making = null;
        }
    }

    private static Document Compose(Sheet sheet, string what, Imprint imprint) =>
        BuildReport.Find(what) is { } whole ? whole.Of(sheet, imprint)
        : what.Length > 0 && Cases.Of(sheet, what, imprint.Measure, new Faults()) is { } cases ? CalculationReport.Of(cases, sheet, imprint) : SheetReport.Of(sheet, imprint);

    private void Cancel() => _making?.Cancel();

    private void Tell(Step step)
    {
        if (step.Share - _step.Share < Worthwhile && step.Share < 1) return;
        _step = step;
        _ = InvokeAsync(StateHasChanged);
    }

    /// <summary>Hands each step on where it is made: the library's own would queue them.</summary>
    private sealed class Heard(Action<Step> tell) : IProgress<Step>
    {
        public void Report(Step value) => tell(value);
    }
}
