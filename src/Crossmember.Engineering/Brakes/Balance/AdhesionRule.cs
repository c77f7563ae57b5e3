using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>What each rule asks of the grip that the axles use. Shares of g and of load.</summary>
/// <remarks>
/// Source:   71/320/EEC Annex II Appendix, 3.1.1 for M1 and N1, read there but for the demand, whose line is from memory (its range, k 0.2 to 0.8, was read; line and N1 range both end
///           at z 0.61); UN Regulation 13-H Annex 5 and 49 CFR 571.135 from memory. Where no rule asks, front before rear from 0.15 to 0.8 is common practice
/// </remarks>
public static class AdhesionRule
{
    public const double Low = 0.15, High = 0.8;

    public const string From71320 = "71/320/EEC Annex II Appendix, 3.1.1; family of UN Regulation 13 Annex 10", From13H = "UN Regulation 13-H Annex 5, from memory",
        From135 = "49 CFR 571.135, torque wheel test, from memory", Sequence135 = "49 CFR 571.135 S7.2, order of locking from 0.15 to 0.80, from memory", Practice = "common practice, no source";

    /// <summary>Where the curves may cross for M1, and by how much the rear may then lie over z.</summary>
    private const double BandFrom = 0.3, BandTo = 0.45, BandOver = 0.05, Beside = 0.08;

    public static bool IsRead(string rule) => rule is BrakeRule.Car13 or BrakeRule.Van13;

    public static string SourceOf(string rule) => rule switch { BrakeRule.Car13 or BrakeRule.Van13 => From71320, BrakeRule.Car13H => From13H, BrakeRule.Car135 => Sequence135, _ => Practice };

    /// <summary>The end of the stretch over which the front must use more than the rear.</summary>
    public static double FrontFirstTo(string rule) => rule == BrakeRule.Van13 ? 0.5 : High;

    /// <summary>Front before rear; for M1 without the band, which is asked by itself.</summary>
    public static Worst FrontFirst(string rule, ReadOnlySpan<UsePiece> pieces, in Loading load) => rule == BrakeRule.Car13
        ? Worst.Of(GripLimit.FrontOverRear(Low, BandFrom), pieces, load).Or(Worst.Of(GripLimit.FrontOverRear(BandTo, High), pieces, load))
        : Worst.Of(GripLimit.FrontOverRear(Low, FrontFirstTo(rule)), pieces, load);

    /// <summary>M1 from 0.3 to 0.45: front before rear, or the rear at most 0.05 over z.</summary>
    public static Worst Band(ReadOnlySpan<UsePiece> pieces, in Loading load) =>
        Worst.Of(GripLimit.FrontOverRear(BandFrom, BandTo), pieces, load, GripLimit.RearAtMost(BandFrom, BandTo, BandOver, 1));

    /// <summary>What N1 takes instead of front before rear: both within 0.08 of z up to 0.3 (the rear may lie lower), then the rear at most 0.08 over z, then the rear's line to 0.61.</summary>
    public static Worst Alternative(ReadOnlySpan<UsePiece> pieces, in Loading load) =>
        Worst.Of(GripLimit.FrontAtMost(Low, 0.3, Beside, 1), pieces, load)
            .Or(Worst.Of(GripLimit.FrontAtLeast(Low, 0.3, -Beside, 1), pieces, load))
            .Or(Worst.Of(GripLimit.RearAtMost(Low, 0.5, Beside, 1), pieces, load))
            .Or(Worst.Of(GripLimit.RearAtMost(0.5, 0.61, -0.42, 2), pieces, load)); // z >= 0.5 k + 0.21

    /// <summary>Slope of the demand z >= 0.1 + slope (k - 0.2) for k from 0.2 to 0.8; null where the rule has none.</summary>
    public static double? DemandSlope(string rule) => rule switch { BrakeRule.Car13 or BrakeRule.Van13 => 0.85, BrakeRule.Car13H => 0.7, _ => null };

    /// <summary>The demand on both axles: on a road of grip k neither may lock before z. Below z 0.1 no axle may use more than 0.2.</summary>
    public static Worst Demand(double slope, ReadOnlySpan<UsePiece> pieces, in Loading load)
    {
        double at = 0.2 - (0.1 / slope), to = 0.1 + (0.6 * slope);
        return Worst.Of(GripLimit.FrontAtMost(0.01, 0.1, 0.2, 0), pieces, load).Or(Worst.Of(GripLimit.RearAtMost(0.01, 0.1, 0.2, 0), pieces, load))
            .Or(Worst.Of(GripLimit.FrontAtMost(0.1, to, at, 1 / slope), pieces, load)).Or(Worst.Of(GripLimit.RearAtMost(0.1, to, at, 1 / slope), pieces, load));
    }

    /// <summary>The rear's curve under z = 0.9 k.</summary>
    public static Worst NineTenths(ReadOnlySpan<UsePiece> pieces, in Loading load) => Worst.Of(GripLimit.RearAtMost(Low, High, 0, 1 / 0.9), pieces, load);
}
