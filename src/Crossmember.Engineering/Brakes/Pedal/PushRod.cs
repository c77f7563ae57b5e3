namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Fluid that a circuit takes: some before there is pressure, the rest in proportion to it (m3 and m3/Pa).</summary>
internal readonly record struct Circuit(double TakeUp, double PerPascal)
{
    public double At(double pressure) => TakeUp + (PerPascal * Math.Max(0, pressure));

    public static Circuit operator +(Circuit a, Circuit b) => new(a.TakeUp + b.TakeUp, a.PerPascal + b.PerPascal);

    public Circuit Half => new(TakeUp / 2, PerPascal / 2);
}

/// <summary>Way of the push rod over the pressure of the front circuit, in m: a way before there is pressure, then straight.</summary>
/// <remarks>
/// Formula:  one bore: the fluid of both circuits over its area, the take-up over the large bore of a stepped one; on a bar each cylinder's own way, weighted by the other's arm
/// Valid:    both circuits pressed alike; the rear valve, which takes less, is left out (the pedal goes no further than told)
/// Source:   geometry and work on a lever, docs/derivations/brake-pedal.md
/// </remarks>
internal readonly record struct PushRod(double Idle, double PerPascal)
{
    public double At(double pressure) => Idle + (PerPascal * Math.Max(0, pressure));

    /// <summary>Pressure that a way of the rod makes, Pa; 0 where it does not reach.</summary>
    public double Pressure(double way) => PerPascal > 0 ? Math.Max(0, (way - Idle) / PerPascal) : way > Idle ? double.PositiveInfinity : 0;

    public static PushRod Of(in MasterCylinder m, Circuit front, Circuit rear, double takeUp) =>
        m.Twin ? new((RearArm(m) * front.TakeUp / m.FrontArea) + (FrontArm(m) * rear.TakeUp / m.RearArea) + takeUp,
            (RearArm(m) * front.PerPascal / m.FrontArea) + (FrontArm(m) * m.RearShare * rear.PerPascal / m.RearArea))
        : new(((front.TakeUp + rear.TakeUp) / m.Fill) + takeUp, (front.PerPascal + rear.PerPascal) / m.FrontArea);

    /// <summary>One piston's own way over the pressure of its own circuit: what its chamber must have.</summary>
    public static PushRod Piston(in MasterCylinder m, bool front, Circuit own, double takeUp)
    {
        var area = front ? m.FrontArea : m.RearArea;
        return new((own.TakeUp / (m.Twin ? area : m.Fill)) + (takeUp / 2), own.PerPascal / area);
    }

    /// <summary>With one circuit lost: its chamber bottoms first, then the other fills. Pressure is that of the line which is left.</summary>
    public static PushRod Lost(in MasterCylinder m, bool front, double chamber, Circuit left, double takeUp)
    {
        if (!m.Twin) return new(chamber + (left.TakeUp / m.Fill) + (takeUp / 2), left.PerPascal / m.FrontArea);
        double arm = front ? RearArm(m) : FrontArm(m), other = 1 - arm, area = front ? m.RearArea : m.FrontArea;
        return new((arm * chamber) + (other * left.TakeUp / area) + (takeUp / 2), other * left.PerPascal / area);
    }

    /// <summary>Share of the front rod's way that the bearing makes: the arm to the other rod.</summary>
    private static double RearArm(in MasterCylinder m) => m.FrontShare;

    private static double FrontArm(in MasterCylinder m) => 1 - m.FrontShare;
}
