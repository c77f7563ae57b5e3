using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>What a drive's inputs come to once the quantities are unwrapped. SI.</summary>
/// <param name="Fade">Of front and rear; no fade where the letters are not known.</param>
internal sealed record DriveHeatSetup(
    BrakeNodes Front, BrakeNodes Rear, (FadeLine Front, FadeLine Rear) Fade, Rig Rig, Driven Vehicle, DriveProfile Profile, double Start, double Air)
{
    public HeatRun Begin() => new(Front, Rear, Fade.Front, Fade.Rear, Rig, Start, Air);

    /// <summary>Null where an axle is not told of, or one of its sides has a drum and the other a disc.</summary>
    public static DriveHeatSetup? Of(DriveHeat.Inputs x)
    {
        if (TwoAxles.Rig(x.Forces, x.Thresholds, x.Valve, x.ValveKnee, x.ValveSlope, x.Metering, x.RearShare) is not { } rig) return null;
        if (TwoAxles.Same(x.FrontKind) is not { } front || TwoAxles.Same(x.RearKind) is not { } rear) return null;
        if (!TwoAxles.Find(x.HeatMasses, out var mf, out var mr) || !TwoAxles.Find(x.RotorShares, out var sf, out var sr)) return null;
        if (!TwoAxles.Find(x.Cooling, out var cf, out var cr) || !TwoAxles.Find(x.CoolingAreas, out var af, out var ar) || !TwoAxles.Find(x.LiningAreas, out var lf, out var lr)) return null;
        double air = x.AirTemperature.Kelvins, start = x.StartTemperature.Kelvins;
        if (air <= 0 || start <= 0) return null;
        var vehicle = new Driven(x.Mass.Kilograms, x.RotatingFactor.DecimalFractions, x.RollingResistance.DecimalFractions,
            0.5 * x.AirDensity.KilogramsPerCubicMeter * x.DragArea.SquareMeters, (double)x.EnginePower.Watts);
        var profile = new DriveProfile(x.SpeedProfile, x.HeightProfile, x.Grade.DecimalFractions, x.Length.Meters, x.Speed.MetersPerSecond,
            (int)Math.Min(x.StopsCount.DecimalFractions, MostStops), x.StopsFrom.MetersPerSecond, x.StopsTo.MetersPerSecond, x.Interval.Seconds, x.Deceleration.DecimalFractions * Stretch.Gravity);
        return new(Nodes(front, mf, cf, af, lf, sf), Nodes(rear, mr, cr, ar, lr, sr), (Fading(x.FrontLetters, x.FrontSensitivity), Fading(x.RearLetters, x.RearSensitivity)),
            rig, vehicle, profile, start, air);
    }

    private const double MostStops = 1000;

    private static BrakeNodes Nodes(string kind, UnitsNet.Mass mass, Power shed, Area area, Area lining, Ratio share) =>
        BrakeNodes.Of(kind == TwoAxles.Drum, mass.Kilograms, (double)shed.Watts, area.SquareMeters, lining.SquareMeters, Math.Min(1, share.DecimalFractions));

    /// <summary>Of two unlike sides the one that fades more.</summary>
    private static FadeLine Fading(Members<string>? letters, Members<Ratio>? sensitivity)
    {
        if (letters is null) return FadeLine.None;
        double most = 1;
        foreach (var (_, s) in sensitivity?.Items ?? []) most = Math.Max(most, s.DecimalFractions);
        var worst = new FadeLine(double.PositiveInfinity, most);
        foreach (var (_, text) in letters.Items)
            if (FadeLine.Of(text, most) is { } line && line.Hot < worst.Hot) worst = line;
        return worst;
    }

    public static Loading? Loaded(DriveHeat.Inputs x) =>
        x.CenterX is { } a && x.CenterHeight is { } h && x.Wheelbase is { } L && a < L ? new(x.Mass.Kilograms * Loading.Gravity, L.Meters, a.Meters, h.Meters) : null;
}
