using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>One answer for each inequality: beyond a row that was read is a fail, beyond one from memory or practice a caution.</summary>
internal static class AdhesionFindings
{
    private const string NotAsked = "The chosen rule does not ask this.";

    public static void Answer(Worksheet w, string rule, ReadOnlySpan<UsePiece> pieces, in Loading load)
    {
        var beyond = AdhesionRule.IsRead(rule) ? Verdict.Fail : Verdict.Caution;
        var first = AdhesionRule.FrontFirst(rule, pieces, load);
        var instead = rule == BrakeRule.Van13 ? AdhesionRule.Alternative(pieces, load) : Worst.None;
        FrontFirst(w, rule, first, instead, beyond);
        if (rule == BrakeRule.Van13) Alternative(w, first, instead, beyond);
        else w.Answer("alternative", Verdict.Pass, NotAsked);
        if (rule == BrakeRule.Car13) Band(w, AdhesionRule.Band(pieces, load), beyond);
        else w.Answer("band", Verdict.Pass, NotAsked);
        if (AdhesionRule.DemandSlope(rule) is { } slope) Demand(w, rule, AdhesionRule.Demand(slope, pieces, load));
        else w.Answer("demand", Verdict.Pass, NotAsked);
        if (rule == BrakeRule.Car135) NineTenths(w, AdhesionRule.NineTenths(pieces, load));
        else w.Answer("nine-tenths", Verdict.Pass, NotAsked);
    }

    private static void FrontFirst(Worksheet w, string rule, in Worst first, in Worst instead, Verdict beyond)
    {
        if (double.IsInfinity(first.Margin)) return;
        var takes = first.Margin < 0 && instead.Margin is >= 0 and < double.PositiveInfinity;
        var law = rule is BrakeRule.None or BrakeRule.Truck105 ? "" : $" {BrakeRule.LocalLaw}";
        if (takes)
        {
            w.Answer("front-first", Verdict.Pass, $"The rear axle comes first at {first.Z:0.00} g, but keeps within the bands that the rule takes instead.{law}", first.Margin, "1", AdhesionRule.SourceOf(rule));
            return;
        }
        w.AtLeast("front-first", first.Margin, 0, "1", first.Margin < 0
            ? $"At {first.Z:0.00} g the rear axle uses {Told(first.RearUse)} of grip where the front uses {Told(first.FrontUse)}: the rear wheels lock first and it swaps ends.{law}"
            : $"The front axle uses more grip than the rear all the way, nearest at {first.Z:0.00} g ({Told(first.FrontUse)} against {Told(first.RearUse)}).{law}",
            AdhesionRule.SourceOf(rule), beyond: beyond);
    }

    private static void Alternative(Worksheet w, in Worst first, in Worst instead, Verdict beyond)
    {
        if (double.IsInfinity(instead.Margin)) return;
        if (first.Margin >= 0)
            w.Answer("alternative", Verdict.Pass, $"Not needed: the front axle comes first. {BrakeRule.LocalLaw}", instead.Margin, "1", AdhesionRule.From71320);
        else
            w.AtLeast("alternative", instead.Margin, 0, "1",
                $"The bands that the rule takes instead are {(instead.Margin < 0 ? "left" : "tightest")} at {instead.Z:0.00} g: front {Told(instead.FrontUse)}, rear {Told(instead.RearUse)}. {BrakeRule.LocalLaw}",
                AdhesionRule.From71320, beyond: beyond);
    }

    private static void Band(Worksheet w, in Worst band, Verdict beyond)
    {
        if (double.IsInfinity(band.Margin)) return;
        w.AtLeast("band", band.Margin, 0, "1", band.Margin < 0
            ? $"At {band.Z:0.00} g the rear axle comes first and uses {Told(band.RearUse)} of grip, more than 0.05 over the deceleration. {BrakeRule.LocalLaw}"
            : $"From 0.3 to 0.45 g the front axle comes first or the rear stays close enough, tightest at {band.Z:0.00} g. {BrakeRule.LocalLaw}", AdhesionRule.From71320, beyond: beyond);
    }

    private static void Demand(Worksheet w, string rule, in Worst demand)
    {
        if (double.IsInfinity(demand.Margin)) return;
        w.AtLeast("demand", demand.Margin, 0, "1", demand.Margin < 0
            ? $"For {demand.Z:0.00} g the axles use {Told(demand.FrontUse)} front and {Told(demand.RearUse)} rear, more than the rule allows: too little of the road is used before an axle locks. {BrakeRule.LocalLaw}"
            : $"Enough of every road is used before an axle locks, tightest at {demand.Z:0.00} g (front {Told(demand.FrontUse)}, rear {Told(demand.RearUse)}). {BrakeRule.LocalLaw}",
            $"{(rule == BrakeRule.Car13H ? AdhesionRule.From13H : AdhesionRule.From71320 + "; the line from memory")}", beyond: Verdict.Caution);
    }

    private static void NineTenths(Worksheet w, in Worst nine)
    {
        if (double.IsInfinity(nine.Margin)) return;
        w.AtLeast("nine-tenths", nine.Margin, 0, "1", nine.Margin < 0
            ? $"At {nine.Z:0.00} g the rear axle uses {Told(nine.RearUse)} of grip, above the rule's line: its wheels may lock too early. {BrakeRule.LocalLaw}"
            : $"The rear axle keeps beneath the rule's line, tightest at {nine.Z:0.00} g ({Told(nine.RearUse)} of grip). {BrakeRule.LocalLaw}", AdhesionRule.From135, beyond: Verdict.Caution);
    }

    private static string Told(double use) => use > 9 ? "more than it has" : use.ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
}
