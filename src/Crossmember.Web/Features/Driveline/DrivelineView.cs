using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Areas;
using Crossmember.Web.Features.Figures;

namespace Crossmember.Web.Features.Driveline;

/// <summary>What one side, and the side it is compared with, say of the driveline.</summary>
public sealed class DrivelineView(OpenBuild open, ShopFacts shop, string scenario, string? against) : AreaView(open, shop, scenario, against, Area)
{
    private const string Area = "driveline.";

    /// <summary>Calculations that draw curves over road speed, in the order they are looked at.</summary>
    private static readonly string[] s_drawn = ["driveline.speed-curves", "driveline.tractive-curves"];

    public IReadOnlyList<string> Ranges => [.. Members("range")];

    /// <summary>The curves of a range of the transfer case, the vehicle loaded as in a condition.</summary>
    public IReadOnlyList<(CurveChart Chart, CurveFiles Files)> Charts(string? range, string? condition, MeasureSystem measure) =>
        [.. s_drawn.SelectMany(drawn => Instances(Now).Where(i => i.Instance.Calculation.Id == drawn && Belongs(i, range, condition))).SelectMany(i => Charts(i, measure))];

    /// <summary>In rad/s; null where nobody said.</summary>
    public double? Redline => Now.Key("engine.redline")?.Value is { IsNumber: true } redline ? redline.Number : null;

    /// <summary>One number that a calculation gives on both sides, in SI.</summary>
    public Compared Number(string calculation, string output, string members = "") => new(One(Now, calculation, output, members), One(Then, calculation, output, members));

    public IReadOnlyList<GearRow> Gears(string range) =>
    [
        .. Members("gear").Select(gear => (Gear: gear, At: $"[gear={gear},range={range}]"))
            .Where(g => Now.Instance(Area + "overall-ratio" + g.At) is not null)
            .Select(g => new GearRow(g.Gear, Number(Area + "overall-ratio", "ratio", g.At), Number(Area + "road-speed", "roadSpeed", g.At), Number(Area + "engine-speed", "engineSpeed", g.At))),
    ];

    public IReadOnlyList<AxleRatioOption> AxleRatios => AxleRatioOption.Of(Now, Number(Area + "restoring-ratio", "axleRatio").Now);

    /// <summary>A peak figure is asked for only where the curve it stands in for is not known.</summary>
    protected override bool StandsIn(InstanceState state, string input) =>
        input is "peakTorque" or "peakPower" && state.Instance.Calculation.InputIndex("torqueCurve") is >= 0 and var curve && !state.Inputs[curve].IsAbsent;

    /// <summary>Sets that an instance has no part in do not matter.</summary>
    private bool Belongs(InstanceState state, string? range, string? condition) =>
        state.Instance.Members.Select(Now.Plan.Space.Member).All(m => m.Member == (m.Set switch { "range" => range, "condition" => condition, _ => m.Member }));

    private static double? One(Sheet? sheet, string calculation, string output, string members) =>
        sheet?.Instance(calculation + members) is { } state && state.Instance.Calculation.OutputIndex(output) is >= 0 and var o && state.Outcome.Outputs[o] is { IsNumber: true } value ? value.Number : null;
}

/// <summary>A number on both sides, in SI; null where it is not known or there is no such side.</summary>
public readonly record struct Compared(double? Now, double? Then);

/// <summary>A gear in one range: its overall ratio, road speed at the redline, engine speed at cruise.</summary>
public sealed record GearRow(string Gear, Compared Ratio, Compared AtRedline, Compared AtCruise);
