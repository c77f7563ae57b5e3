using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Storage.Rows;
using Crossmember.Web.Features.Layout;
using Crossmember.Web.Features.Paper;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.Bench;

/// <summary>One calculation by itself, drawn from its description: form, result, findings, working, curves.</summary>
public sealed partial class CardPage
{
    private Workpiece? _work;
    private Outcome _outcome = null!;
    private bool _stale, _restored;
    private readonly AddressEcho _echo = new();
    private (string Id, string? Input) _asked;
    private string _nearest = "", _address = "";
    private string? _unfinished, _worked;
    private MeasureSystem _measure;
    private IReadOnlyList<Fault> _addressFaults = [];
    private IReadOnlyList<(CurveChart Chart, CardFiles Files)> _charts = [];
    private IReadOnlyList<BuildRow> _builds = [];

    [Parameter] public string Id { get; set; } = "";

    /// <summary>The input of <c>calc run</c>.</summary>
    [SupplyParameterFromQuery(Name = "input")] public string? Input { get; set; }

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    [Inject] private ShopDesk Desk { get; set; } = null!;

    [Inject] private NavigationManager Nav { get; set; } = null!;

    [Inject] private IJSRuntime Js { get; set; } = null!;

    private Description About => _work!.Calculation.About;

    private string DraftOf => $"bench.{Id}";

    protected override void OnParametersSet()
    {
        var (asked, address) = ((Id, Input), Input ?? "{}");
        if (asked != _asked && (Id != _asked.Id || !_echo.Is(address)))
        {
            _address = address;
            if (Id != _asked.Id) Begin();
            else Take(address);
        }
        else if (_work is not null && _measure != Viewer.Measure) Work();
        _asked = asked;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        // Drafts are kept by unit, so the reader's measures must be known. Who opens what somebody sent is to see that, and not what they typed here themselves some other day.
        if (_restored || !Viewer.Known || !RendererInfo.IsInteractive) return;
        _restored = true;
        if (Input is null) await Js.InvokeVoidAsync("desk.restore");
    }

    private void Begin()
    {
        (_work, _restored) = (null, false);
        _nearest = Nearest.To(Id, CalculationList.All.Select(c => c.Id)) ?? "";
        if (CalculationList.Find(Id) is not { } calculation) return;
        _builds = Desk.Builds();
        _work = new(calculation);
        Take(_address);
    }

    /// <summary>Puts into the form what stands in an address; what it names wrongly is told.</summary>
    private void Take(string address)
    {
        var calculation = _work!.Calculation;
        _work = new(calculation);
        var faults = new Faults();
        ArgumentReader.Read(calculation, System.Text.Encoding.UTF8.GetBytes(address), faults);
        _addressFaults = [.. FieldFaults.Of(calculation, faults.List).Loose];
        _work.Typed.Fill(address);
        _work.OfferMembers();
        _unfinished = null;
        Work();
    }

    private void Work()
    {
        _measure = Viewer.Measure;
        _work!.Read(_measure);
        _stale = _work.Arguments is null;
        // What stood there last stays until the form can be read again; another calculation's would mislead.
        if (_stale && _worked == Id) return;
        _worked = Id;
        _outcome = _work.Calculation.Run(_work.Arguments ?? new Value[_work.Calculation.InputSpecs.Count], true);
        var side = new Side(Words.TheseInputs, _outcome.Curves);
        _charts = [.. CurveChart.Of(About.Title, side, null, _measure).Select((chart, i) => (chart, new CardFiles(Id, _work.Input, _measure, i + 1)))];
    }

    private void Type(InputSpec spec)
    {
        _unfinished = spec.Name;
        Work();
    }

    private void Leave(InputSpec spec)
    {
        _unfinished = null;
        Work();
        Keep();
    }

    private void Submit()
    {
        _unfinished = null;
        Work();
        Keep();
    }

    private async Task TryExample(Example example)
    {
        await Forget();
        Take(CatalogueJson.InputOf(example).ToJsonString(Json.Plain));
        Keep();
    }

    private async Task StartAnew()
    {
        await Forget();
        Take("{}");
        Keep();
    }

    private ValueTask Forget() => Js.InvokeVoidAsync("desk.forgetAll", DraftOf + ".");

    /// <summary>What is typed stands in the address, also what cannot be read: nothing typed is lost, and the card can be sent.</summary>
    private void Keep()
    {
        if (_work!.Input == _address) return;
        (_address, _addressFaults) = (_work.Input, []);
        _echo.Write(_address);
        Nav.NavigateTo(BenchAddress.Of(Id, _address), replace: true);
    }

    private string Paper(string ending) => PaperAddress.OfInput(Id, _work!.Input, _measure, ending);
}
