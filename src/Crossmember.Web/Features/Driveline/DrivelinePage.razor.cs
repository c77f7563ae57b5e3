using Crossmember.Builds.Slots;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;
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

    private DrivelineView? _view;
    private IReadOnlyList<(CurveChart Chart, CurveFiles Files)> _charts = [];
    private (string? Range, MeasureSystem Measure) _charted;
    private string _scenario = Option.AsFound;
    private string? _against, _range;

    [Parameter] public string Id { get; set; } = "";

    [SupplyParameterFromQuery(Name = "in")] public string? In { get; set; }

    [SupplyParameterFromQuery(Name = "against")] public string? Against { get; set; }

    [SupplyParameterFromQuery(Name = "range")] public string? Range { get; set; }

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
        var sides = DrivelineView.Sides(open, "");
        var scenario = In is { } named && sides.Contains(named) ? named : BuildGlance.Usual(open, shop);
        var against = Against == Nothing ? null : Against is { } other && sides.Contains(other) && other != scenario ? other : DrivelineView.Sides(open, scenario) is [var first, ..] ? first : null;
        var known = _view is { } view && view.Open.Build.Position == open.Build.Position && ReferenceEquals(view.Open, open) && (_scenario, _against) == (scenario, against);
        if (!known) (_view, _scenario, _against) = (new(open, shop, scenario, against), scenario, against);
        _range = Range is { } asked && _view!.Ranges.Contains(asked) ? asked : _view!.Ranges is [var usual, ..] ? usual : null;
        if (known && _charted == (_range, Viewer.Measure)) return;
        _charted = (_range, Viewer.Measure);
        _charts = _view.Charts(_range, Viewer.Measure);
    }

    private void Go(string scenario, string? against, string? range) => Nav.NavigateTo(
        $"builds/{Uri.EscapeDataString(Id)}/driveline?in={Uri.EscapeDataString(scenario)}&against={Uri.EscapeDataString(against ?? Nothing)}" + (range is null ? "" : $"&range={Uri.EscapeDataString(range)}"));

    private string Address(string item) => $"builds/{Uri.EscapeDataString(Id)}/decisions?item={Uri.EscapeDataString(item)}&in={Uri.EscapeDataString(_scenario)}";

    private void Heard(string build)
    {
        if (build == Id) _ = InvokeAsync(() => { Arrange(); StateHasChanged(); });
    }
}
