using Crossmember.Builds.Slots;
using Crossmember.Web.Features.Areas;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>Where the weight of the vehicle sits, what axles and wheels carry, and what they would if a part sat elsewhere.</summary>
public sealed partial class VehiclePage
{
    /// <summary>In the address: compare with no other side.</summary>
    private const string Nothing = "nothing";

    private string? _load;
    private bool _all;

    /// <summary>As the build stands, and as it would be with the place in hand; the same while nothing is in hand.</summary>
    private MassView? _base, _now, _then;
    private Dictionary<MassRef, int> _numbers = [];

    /// <summary>The condition that the vehicle is loaded as in.</summary>
    [SupplyParameterFromQuery(Name = "load")] public string? Load { get; set; }

    [SupplyParameterFromQuery(Name = "against")] public string? Against { get; set; }

    protected override void Arrange()
    {
        var conditions = MassView.Heaviest(Sheet);
        _load = Load is { } asked && conditions.Contains(asked) ? asked : conditions is [var heaviest, ..] ? heaviest : null;
        var against = Against == Nothing ? null : Against is { } other && other != Scenario && View!.Has(other) ? other : AreaView.Sides(View!.Open, Scenario) is [var first, ..] ? first : null;
        _then = _load is null || against is null ? null : new(View!.Sheet(against), _load);
        if (_base is null || _base.Sheet != Sheet || _base.Condition != _load) _base = _load is null ? null : new(Sheet, _load);
        _now = _base;
        _numbers = _base?.Masses.Select((m, i) => (m.Ref, i + 1)).ToDictionary(m => m.Ref, m => m.Item2) ?? [];
        Resume();
    }

    private void Go(string? scenario = null, string? against = null, string? load = null) => Nav.NavigateTo(
        $"builds/{Uri.EscapeDataString(Id)}/vehicle?in={Uri.EscapeDataString(scenario ?? Scenario)}" + Asked("against", against ?? Against) + Asked("load", load ?? Load));

    private static string Asked(string name, string? value) => value is null ? "" : $"&{name}={Uri.EscapeDataString(value)}";

    private string WeighingAddress => $"builds/{Uri.EscapeDataString(Id)}/vehicle/weighing?in={Uri.EscapeDataString(Scenario)}{Asked("load", _load)}";

    private string SheetAddress => $"builds/{Uri.EscapeDataString(Id)}/sheet?in={Uri.EscapeDataString(Scenario)}#weigh";

    private string ItemAddress(Slot slot) => $"builds/{Uri.EscapeDataString(Id)}/decisions?item={Uri.EscapeDataString(slot.Id)}&in={Uri.EscapeDataString(Scenario)}";

    private string FileAddress(string file) =>
        $"api/builds/{Uri.EscapeDataString(Id)}/{file}?in={Uri.EscapeDataString(Scenario)}{Asked("load", _load)}&measure={(Viewer.Measure == Engineering.Quantities.MeasureSystem.Metric ? "metric" : "us")}";
}
