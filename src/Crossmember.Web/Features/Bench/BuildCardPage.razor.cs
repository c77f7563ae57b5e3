using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Figures;
using Crossmember.Web.Features.Paper;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.Bench;

/// <summary>One calculation with the values of a build: where each is from, what another would do, and the way to keep it as a what-if.</summary>
public sealed partial class BuildCardPage
{
    private Sheet _sheet = null!;
    private InstanceState? _state;
    private IReadOnlyList<(string Id, string Where)> _others = [];
    private IReadOnlyList<SheetInput> _inputs = [];
    private Workpiece _work = null!;
    private Outcome _outcome = null!;
    private Outcome? _was;
    private Value[] _arguments = [];
    private IReadOnlyList<(CurveChart Chart, IChartFiles Files)> _charts = [];
    private readonly AddressEcho _echo = new();
    private (string Id, string Instance, string? In, string? Input) _asked;
    private MeasureSystem _measure;
    private bool _restored;
    private string _address = "{}";
    private string? _unfinished;

    /// <summary>An instance, or a calculation: then the instance of it that is worst off.</summary>
    [Parameter] public string Instance { get; set; } = "";

    /// <summary>What is tried, as the input of <c>calc run</c>.</summary>
    [SupplyParameterFromQuery(Name = "input")] public string? Input { get; set; }

    [Inject] private IJSRuntime Js { get; set; } = null!;

    private Description About => _state!.Instance.Calculation.About;

    private string Calculation => BenchAddress.CalculationOf(Instance);

    private string DraftOf => $"bench.{Id}.{Scenario}.{_state!.Instance.Id}";

    /// <summary>All that goes in, as the input of <c>calc run</c>.</summary>
    private string Everything => ArgumentWriter.Of(_state!.Instance.Calculation, _arguments).ToJsonString(Json.Plain);

    protected override void Arrange()
    {
        var asked = (Id, Instance, In, Input);
        if (asked != _asked && !IsEcho()) Load(Input ?? "{}");
        else if (!ReferenceEquals(_sheet, Sheet)) Present();
        else if (_measure != Viewer.Measure && _state is not null) Describe();
        _asked = asked;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        // Drafts are kept by unit, so the reader's measures must be known; what stands in the address comes first.
        if (_restored || !Viewer.Known || _state is null || !RendererInfo.IsInteractive) return;
        _restored = true;
        if (Input is null) await Js.InvokeVoidAsync("desk.restore");
    }

    /// <summary>Whether the address is what this card wrote into it: the same place in the same what-if, with what was tried a moment ago.</summary>
    private bool IsEcho() => (Id, Instance) == (_asked.Id, _asked.Instance) && (In ?? _sheet.Scenario) == _sheet.Scenario && _echo.Is(Input ?? "{}");

    private void Load(string address)
    {
        if ((Id, Instance, In) != (_asked.Id, _asked.Instance, _asked.In))
        {
            _restored = false;
            Pen.Clear();
        }
        (_address, _unfinished, _arguments) = (address, null, []);
        if (!Find()) return;
        _work = new(_state!.Instance.Calculation);
        _work.Typed.Fill(address);
        Describe();
    }

    /// <summary>The same card of the build as it has become.</summary>
    private void Present()
    {
        if (!Find()) return;
        _work ??= new(_state!.Instance.Calculation);
        Describe();
    }

    /// <summary>The sheet and the instance; false where the instance does not exist in it.</summary>
    private bool Find()
    {
        _sheet = Sheet;
        var all = BenchIndex.Instances(_sheet, Calculation);
        _others = [.. all.Select(i => (i.Instance.Id, BenchIndex.Where(_sheet, i.Instance)))];
        _state = all.FirstOrDefault(i => i.Instance.Id == Instance) ?? (Instance == Calculation ? all.OrderByDescending(i => BenchIndex.Worst(i) is { } v ? (int)v : -1).FirstOrDefault() : null);
        return _state is not null;
    }

    /// <summary>What the build gives each input, with a row in the form for each member of a map.</summary>
    private void Describe()
    {
        _measure = Viewer.Measure;
        _inputs = SheetInput.Of(_sheet, _state!, _measure);
        foreach (var input in _inputs.Where(i => i.IsMap))
            foreach (var reading in input.Readings) _work.Typed.Member(input.Spec.Name, reading.Member);
        Work();
    }

    private void Work()
    {
        _work.Read(_measure);
        if (_work.Arguments is not { } read && _outcome is not null && _arguments.Length == _inputs.Count) return;
        var calculation = _state!.Instance.Calculation;
        _arguments = _work.Arguments is { } there ? TriedInstance.Arguments(_state, _inputs, _work.Typed, there) : _state.Inputs;
        var build = _state.Shown();
        var tried = _work.Arguments is not null && !_arguments.AsSpan().SequenceEqual(_state.Inputs);
        (_outcome, _was) = tried ? (calculation.Run(_arguments, true), build) : (build, null);
        _charts = tried
            ? [.. CurveChart.Of(About.Title, new("tried here", _outcome.Curves), new("in the build", build.Curves), _measure).Select((c, i) => (c, (IChartFiles)new CardFiles(calculation.Id, Everything, _measure, i + 1)))]
            : [.. SheetCurves.Of(_sheet, null, _state.Instance.Id, _measure)!.Select((c, i) => (c, (IChartFiles)new CurveFiles(Id, _state.Instance.Id, Scenario, null, _measure, i + 1)))];
    }

    private void Type(InputSpec spec)
    {
        _unfinished = spec.Name;
        Work();
    }

    private void Leave(InputSpec spec) => Submit();

    private void Submit()
    {
        _unfinished = null;
        Work();
        Keep();
    }

    private async Task Drop(InputSpec spec)
    {
        _work.Typed.Clear(spec.Name);
        Submit();
        await Js.InvokeVoidAsync("desk.forgetAll", $"{DraftOf}.{spec.Name}.");
    }

    private async Task DropAll()
    {
        foreach (var input in _inputs) _work.Typed.Clear(input.Spec.Name);
        Submit();
        await Js.InvokeVoidAsync("desk.forgetAll", DraftOf + ".");
    }

    /// <summary>What is tried stands in the address: it survives a reload and can be sent.</summary>
    private void Keep()
    {
        if (_work.Input == _address) return;
        _address = _work.Input;
        _echo.Write(_address);
        Nav.NavigateTo(BenchAddress.Of(Id, Scenario, Instance, _address), replace: true);
    }

    private (string Id, string Where)? Beside(int step)
    {
        var at = _others.ToList().FindIndex(o => o.Id == _state!.Instance.Id) + step;
        return at >= 0 && at < _others.Count ? _others[at] : null;
    }

    private string Address(string instance) => BenchAddress.Of(Id, Scenario, instance);

    private void Go(string instance, string? scenario = null) => Nav.NavigateTo(BenchAddress.Of(Id, scenario ?? Scenario, instance));

    private string Paper(string ending) => _was is null
        ? new PaperAddress(Id, Scenario, _measure, _state!.Instance.Id).File(ending)
        : PaperAddress.OfInput(Calculation, Everything, _measure, ending);
}
