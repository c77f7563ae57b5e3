using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Figures;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Areas;

/// <summary>One part of the vehicle's engineering, in one what-if against another side.</summary>
public sealed partial class AreaPage
{
    /// <summary>In the address: compare with no other side; show every loading condition.</summary>
    private const string Nothing = "nothing", Every = "every";

    private AreaView? _view;
    private VehicleArea? _area;
    private IReadOnlyList<SheetFinding> _findings = [];
    private IReadOnlyList<(Calculation Calculation, IReadOnlyList<InstanceState> Columns)> _calculations = [];
    private IReadOnlyList<(CurveChart Chart, CurveFiles Files)> _charts = [];
    private string _scenario = Option.AsFound;
    private string? _against, _load;

    [Parameter] public string Id { get; set; } = "";

    /// <summary>Which part, as <see cref="VehicleArea.Path"/>.</summary>
    [Parameter] public string Part { get; set; } = "";

    [SupplyParameterFromQuery(Name = "in")] public string? In { get; set; }

    [SupplyParameterFromQuery(Name = "against")] public string? Against { get; set; }

    /// <summary>The loading condition to look at.</summary>
    [SupplyParameterFromQuery(Name = "load")] public string? Load { get; set; }

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    [Inject] private ShopDesk Desk { get; set; } = null!;

    [Inject] private NavigationManager Nav { get; set; } = null!;

    protected override void OnInitialized() => Desk.Changed += Heard;

    public void Dispose() => Desk.Changed -= Heard;

    protected override void OnParametersSet() => Arrange();

    private void Arrange()
    {
        (_view, _area) = (null, VehicleArea.Find(Part));
        if (Desk.Open(Id) is not { } open) return;
        var shop = Desk.Shop.Shelf.Shop();
        var sides = AreaView.Sides(open, "");
        _scenario = In is { } named && sides.Contains(named) ? named : BuildGlance.Usual(open, shop);
        _against = Against == Nothing ? null : Against is { } other && sides.Contains(other) && other != _scenario ? other : AreaView.Sides(open, _scenario) is [var first, ..] ? first : null;
        _view = new(open, shop, _scenario, _against, _area?.Prefixes ?? []);
        _load = Load == Every || (Load is not null && _view.Conditions.Contains(Load)) ? Load : _view.Conditions is [var heaviest, ..] ? heaviest : null;
        _findings = [.. _view.Findings.Where(f => Belongs(f.Id))];
        _calculations = [.. _view.Calculations.Select(g => (g.Key, Columns: (IReadOnlyList<InstanceState>)[.. g.Where(i => Belongs(i.Instance.Id) && i.Outcome.Outputs.Any(o => !o.IsAbsent))])).Where(c => c.Columns.Count > 0)];
        _charts = [.. _calculations.SelectMany(c => c.Columns).SelectMany(i => _view.Charts(i, Viewer.Measure))];
    }

    /// <summary>What has no part in loading belongs to every condition.</summary>
    private bool Belongs(string id) => _load is null or Every || !id.Contains("condition=", StringComparison.Ordinal) || id.Contains($"condition={_load}", StringComparison.Ordinal);

    private static bool BelongsTo(CurveFiles files, Calculation calculation) => Bench.BenchAddress.CalculationOf(files.Instance) == calculation.Id;

    private void Go(string? scenario = null, string? against = null, string? load = null) => Nav.NavigateTo(
        $"builds/{Uri.EscapeDataString(Id)}/vehicle/{Uri.EscapeDataString(Part)}?in={Uri.EscapeDataString(scenario ?? _scenario)}&against={Uri.EscapeDataString(against ?? _against ?? Nothing)}"
        + ((load ?? Load) is { } asked ? $"&load={Uri.EscapeDataString(asked)}" : ""));

    private void Heard(string build)
    {
        if (build == Id) _ = InvokeAsync(() => { Arrange(); StateHasChanged(); });
    }
}
