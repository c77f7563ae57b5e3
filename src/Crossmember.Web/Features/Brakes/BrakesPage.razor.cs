using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Areas;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Figures;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Brakes;

/// <summary>How the vehicle stops, in one what-if against another side.</summary>
public sealed partial class BrakesPage
{
    /// <summary>In the address: compare with no other side; draw every loading condition together.</summary>
    private const string Nothing = "nothing", Every = "every";

    private BrakesView? _view;
    private BrakeArea? _area;
    private IReadOnlyList<(Calculation Calculation, IReadOnlyList<InstanceState> Columns)> _calculations = [];
    private IReadOnlyList<(CurveChart Chart, CurveFiles Files)> _charts = [];
    private string _scenario = Option.AsFound;
    private string? _against, _load;
    private string? _asked;
    private MeasureSystem? _measure;

    [Parameter] public string Id { get; set; } = "";

    /// <summary>Whether anything is drawn for each loading by itself.</summary>
    private bool ByLoad => _view!.Conditions.Count > 1 && _area!.Drawn.Any(d => _view.Now.Instance($"{d}[condition={_view.Conditions[0]}]") is not null);

    /// <summary>Which part, as <see cref="BrakeArea.Path"/>; null: the overview.</summary>
    [Parameter] public string? Part { get; set; }

    [SupplyParameterFromQuery(Name = "in")] public string? In { get; set; }

    [SupplyParameterFromQuery(Name = "against")] public string? Against { get; set; }

    /// <summary>The loading that curves are drawn for.</summary>
    [SupplyParameterFromQuery(Name = "load")] public string? Load { get; set; }

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    [Inject] private ShopDesk Desk { get; set; } = null!;

    [Inject] private NavigationManager Nav { get; set; } = null!;

    protected override void OnInitialized() => Desk.Changed += Heard;

    public void Dispose() => Desk.Changed -= Heard;

    protected override void OnParametersSet() => Arrange();

    /// <summary>Looks anew only where something else is asked for: a drawing is worth keeping.</summary>
    private void Arrange()
    {
        var area = BrakeArea.Find(Part);
        if (area is null || Desk.Open(Id) is not { } open)
        {
            (_view, _area) = (null, area);
            return;
        }
        var shop = Desk.Shop.Shelf.Shop();
        var sides = AreaView.Sides(open, "");
        var scenario = In is { } named && sides.Contains(named) ? named : BuildGlance.Usual(open, shop);
        var against = Against == Nothing ? null : Against is { } other && sides.Contains(other) && other != scenario ? other : AreaView.Sides(open, scenario) is [var first, ..] ? first : null;
        if (_view is { } known && ReferenceEquals(known.Open, open) && known.Build.Position == open.Build.Position && (_area, _scenario, _against, _measure, _asked) == (area, scenario, against, Viewer.Measure, Load)) return;
        (_area, _scenario, _against, _measure, _asked) = (area, scenario, against, Viewer.Measure, Load);
        _view = new(open, shop, scenario, against, area.Calculations);
        _calculations = [.. _view.Calculations.Select(g => (g.Key, Columns: (IReadOnlyList<InstanceState>)[.. g.Where(i => i.Outcome.Outputs.Any(o => !o.IsAbsent))])).Where(c => c.Columns.Count > 0)];
        _load = Load == Every || (Load is not null && _view.Conditions.Contains(Load)) ? Load : area.Together ? Every : _view.Conditions is [var heaviest, ..] ? heaviest : Every;
        _charts = [.. area.Drawn.SelectMany(d => _load != Every && _view.Now.Instance($"{d}[condition={_load}]") is { } one ? _view.Charts(one, Viewer.Measure) : _view.Together(d, Viewer.Measure))];
    }

    private void Go(string? scenario = null, string? against = null, string? load = null) => Nav.NavigateTo(
        $"builds/{Uri.EscapeDataString(Id)}/brakes{(Part is null ? "" : "/" + Uri.EscapeDataString(Part))}?in={Uri.EscapeDataString(scenario ?? _scenario)}&against={Uri.EscapeDataString(against ?? _against ?? Nothing)}"
        + ((load ?? Load) is { } asked ? $"&load={Uri.EscapeDataString(asked)}" : ""));

    private string Address(string part) =>
        $"builds/{Uri.EscapeDataString(Id)}/brakes{(part.Length == 0 ? "" : "/" + part)}?in={Uri.EscapeDataString(_scenario)}&against={Uri.EscapeDataString(_against ?? Nothing)}";

    private void Heard(string build)
    {
        if (build == Id) _ = InvokeAsync(() => { Arrange(); StateHasChanged(); });
    }
}
