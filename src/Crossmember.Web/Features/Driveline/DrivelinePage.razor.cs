using Crossmember.Builds.Slots;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Areas;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Figures;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.Driveline;

/// <summary>How the vehicle is geared and how it pulls, in one what-if against another side.</summary>
public sealed partial class DrivelinePage
{
    /// <summary>In the address: compare with no other side.</summary>
    private const string Nothing = "nothing";

    /// <summary>What is printed from here, with every range and load that there is.</summary>
    private static readonly (string What, string Id)[] s_printed =
        [("Engine speed over road speed", "driveline.speed-curves"), ("Pull over road speed", "driveline.tractive-curves"), ("Engine speed at cruise", "driveline.cruise")];

    private DrivelineView? _view;
    private IReadOnlyList<(CurveChart Chart, CurveFiles Files)> _charts = [];
    private (string? Range, string? Load, MeasureSystem Measure) _charted;
    private string _scenario = Option.AsFound;
    private string? _against, _range, _load;

    [Parameter] public string Id { get; set; } = "";

    [SupplyParameterFromQuery(Name = "in")] public string? In { get; set; }

    [SupplyParameterFromQuery(Name = "against")] public string? Against { get; set; }

    [SupplyParameterFromQuery(Name = "range")] public string? Range { get; set; }

    /// <summary>The condition that the vehicle is loaded as in.</summary>
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
        if (Desk.Open(Id) is not { } open)
        {
            _view = null;
            return;
        }
        var shop = Desk.Shop.Shelf.Shop();
        var sides = AreaView.Sides(open, "");
        var scenario = In is { } named && sides.Contains(named) ? named : BuildGlance.Usual(open, shop);
        var against = Against == Nothing ? null : Against is { } other && sides.Contains(other) && other != scenario ? other : AreaView.Sides(open, scenario) is [var first, ..] ? first : null;
        var known = _view is { } view && view.Open.Build.Position == open.Build.Position && ReferenceEquals(view.Open, open) && (_scenario, _against) == (scenario, against);
        if (!known) (_view, _scenario, _against) = (new(open, shop, scenario, against), scenario, against);
        (_range, _load) = (Pick(Range, _view!.Ranges), Pick(Load, _view.Conditions));
        if (known && _charted == (_range, _load, Viewer.Measure)) return;
        _charted = (_range, _load, Viewer.Measure);
        _charts = _view.Charts(_range, _load, Viewer.Measure);
    }

    private static string? Pick(string? asked, IReadOnlyList<string> there) => asked is not null && there.Contains(asked) ? asked : there is [var usual, ..] ? usual : null;

    private void Go(string? scenario = null, string? against = null, string? range = null, string? load = null) => Nav.NavigateTo(
        $"builds/{Uri.EscapeDataString(Id)}/driveline?in={Uri.EscapeDataString(scenario ?? _scenario)}&against={Uri.EscapeDataString(against ?? _against ?? Nothing)}"
        + Asked("range", range ?? Range) + Asked("load", load ?? Load));

    private static string Asked(string name, string? value) => value is null ? "" : $"&{name}={Uri.EscapeDataString(value)}";

    private string Address(string item) => $"builds/{Uri.EscapeDataString(Id)}/decisions?item={Uri.EscapeDataString(item)}&in={Uri.EscapeDataString(_scenario)}";

    private void Heard(string build)
    {
        if (build == Id) _ = InvokeAsync(() => { Arrange(); StateHasChanged(); });
    }
}
