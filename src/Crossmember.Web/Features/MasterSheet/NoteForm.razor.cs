using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>Takes a value as somebody writes it, and says beside the field what it did not understand.</summary>
public sealed partial class NoteForm
{
    private static readonly Dictionary<Basis, string> s_from = new()
    {
        [Basis.Measured] = "measured on this vehicle", [Basis.Published] = "published: handbook, plate, marking", [Basis.Vendor] = "a vendor says so", [Basis.Assumed] = "assumed",
    };

    private static readonly Dictionary<Dimension, (string Us, string Metric)> s_points = new()
    {
        [Dimension.Force] = ("20 lbf", "90 N"), [Dimension.Pressure] = ("112 psi", "0.77 MPa"), [Dimension.RotationalSpeed] = ("800 rpm", "800 rpm"), [Dimension.Torque] = ("165 lbf ft", "224 N m"),
        [Dimension.Speed] = ("25 mph", "40 km/h"), [Dimension.Length] = ("300 ft", "100 m"),
    };

    private string _key = "", _listed = "", _text = "", _spread = "", _way = "", _example = "";
    private Basis _basis = Basis.Measured;
    private bool _every, _isCurve, _hasSpread;
    private Fault? _fault;
    private List<IGrouping<string, (string Group, string Key, string Label)>> _groups = [];

    [Parameter, EditorRequired] public Sheet Sheet { get; set; } = null!;

    [Parameter, EditorRequired] public Slot Item { get; set; } = null!;

    /// <summary>The lines of the item.</summary>
    [Parameter, EditorRequired] public IReadOnlyList<SheetLine> Lines { get; set; } = [];

    /// <summary>Those of the whole sheet.</summary>
    [Parameter, EditorRequired] public SheetLines Elsewhere { get; set; } = null!;

    /// <summary>The value it opens with; null: the one most wanted here.</summary>
    [Parameter] public string? Key { get; set; }

    [Parameter] public Entry? Correcting { get; set; }

    [Parameter] public bool Locked { get; set; }

    [Parameter] public MeasureSystem Measure { get; set; }

    /// <summary>Keeps the value, or answers what stands in the way.</summary>
    [Parameter, EditorRequired] public Func<TypedValue, Fault?> OnNote { get; set; } = null!;

    protected override void OnInitialized()
    {
        if (Correcting is not { } wrong) return;
        var said = TypedValue.Of(wrong.Fact.Subject.Split('/')[^1], wrong.Fact.Payload);
        (_key, _text, _basis, _spread) = (said.Key, said.Text, said.Basis, said.PlusMinus);
    }

    protected override void OnParametersSet() => Gather();

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && RendererInfo.IsInteractive) await Js.InvokeVoidAsync("desk.restore");
    }

    private void Gather()
    {
        _groups = [.. Choices().DistinctBy(c => c.Item2).GroupBy(c => c.Item1)];
        // Where the list changes it is made anew: a browser keeps the place that was picked in it, not the value.
        _listed = string.Join('|', _groups.SelectMany(g => g).Select(c => c.Key));
        if (_key.Length == 0 || !_groups.Exists(g => g.Any(c => c.Key == _key))) _key = Key ?? (_groups.Count > 0 ? _groups[0].First().Key : "");
        Describe();
    }

    /// <summary>Most wanted first: what checks wait for, what the item states, what usually belongs to it, and everything only where somebody asks.</summary>
    private IEnumerable<(string, string, string)> Choices()
    {
        if (_key.Length > 0 && Correcting is not null) yield return ("Put right", _key, Label(_key));
        foreach (var line in Lines.Where(l => l.Waiting > 0 && !l.Pattern.IsLedger).OrderByDescending(l => l.Waiting)) yield return ("Checks wait for it", line.Noting, Label(line.Noting));
        foreach (var line in Lines.Where(l => l.Stated is not null)) yield return ("Stated here", line.Noting, Label(line.Noting));
        foreach (var line in Lines.Where(l => !l.Pattern.IsLedger)) yield return ("Belongs here", line.Noting, Label(line.Noting));
        if (Key is { } asked) yield return ("Asked for", asked, Label(asked));
        if (!_every && Lines.Any(l => !l.Pattern.IsLedger)) yield break;
        foreach (var line in Elsewhere.All.Where(l => !l.Pattern.IsLedger).OrderBy(l => l.Pattern.Page, StringComparer.Ordinal).ThenBy(l => l.Title, StringComparer.Ordinal))
            yield return (line.Pattern.Page, line.Key, Label(line.Key));
    }

    private string Label(string key) => Elsewhere.Names.Key(key) is var n && n.Where.Length > 0 ? $"{n.Title}, {n.Where}" : key.Contains('*', StringComparison.Ordinal) ? $"{n.Title}, everywhere" : n.Title;

    private void Unsay()
    {
        _fault = null;
        Describe();
    }

    private void Describe()
    {
        var pattern = Sheet.Plan.Catalogue.Table.Of(_key);
        _isCurve = pattern?.Form == Form.Curve;
        _hasSpread = pattern?.Form == Form.Number;
        var now = Lines.FirstOrDefault(l => l.Noting == _key || l.Keys.Contains(_key)) ?? Elsewhere.Find(_key);
        _way = pattern is null ? "" : $"{(now is { State.Value.IsAbsent: false } known ? $"Now {known.Value(Measure)}. " : "Not known yet. ")}{Words.Sentence(pattern.Measure)}.";
        _example = _isCurve ? Points(pattern!) : pattern?.Dimension is { } dimension && dimension != Dimension.Dimensionless ? $"for example 12 {Display.Customary(dimension, Measure).Code}" : pattern?.Form == Form.Text ? "as it is written on the part" : "for example 4.10";
    }

    /// <summary>A first pair in the units of the key itself, so that nobody wonders what goes first.</summary>
    /// <summary>A first pair in the units of the key itself, so that nobody wonders what goes first.</summary>
    private string Points(ParameterPattern pattern) => $"{Some(pattern.Dimension)}, {Some(pattern.CurveUnit?.Dimension)}";

    private string Some(Dimension? dimension) => dimension is null || dimension == Dimension.Dimensionless ? "0.3"
        : s_points.TryGetValue(dimension, out var usual) ? Measure == MeasureSystem.Metric ? usual.Metric : usual.Us : $"10 {Display.Customary(dimension, Measure).Code}";

    private string Draft(string field) => $"note.{Sheet.Build.Id}.{Item.Id}.{_key}.{field}{(Correcting is null ? "" : ".right")}";

    private string? Invalid(string field) => _fault is { } fault && (fault.Path == TypedValue.SpreadField) == (field == TypedValue.SpreadField) ? "true" : null;

    private async Task Send()
    {
        var drafts = new[] { Draft("value"), Draft("spread") };
        _fault = OnNote(new(_key, _text, _basis, _spread));
        if (_fault is not null) return;
        (_text, _spread) = ("", "");
        Describe();
        foreach (var draft in drafts) await Js.InvokeVoidAsync("desk.forget", draft);
    }
}
