using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Recovery;

/// <summary>What a bolted bracket on a frame holds: its bolts in tension and shear together, and the wall that they bear on. SI throughout.</summary>
/// <remarks>
/// Formula:  (T / (Sp As))^2 + (V / (0.577 Sp As))^2 at most 1; bearing V / (d t) at most the frame's yield strength
/// Valid:    proof strength is the limit; threads are taken to lie in the shear plane; a stiff bracket, a wall that does not buckle or tear
/// Source:   docs/derivations/bolt-group.md; shear at 0.577 of tension: distortion energy, textbooks of machine design from memory
/// </remarks>
internal sealed record Bracket(BoltGroup Group, double Diameter, double? Pitch, double Proof, double Wall, double Yield, double Height, double Ahead)
{
    /// <summary>More bolts than any bracket has: a slip of the pen.</summary>
    public const int MostBolts = 24;

    /// <summary>Shear strength over tensile strength by distortion energy.</summary>
    private const double Shear = 0.577;

    public double Area => BoltGrade.StressArea(Diameter, Pitch);

    /// <summary>Tension and shear of the worst bolt in N, its use, and the use of the wall behind the bolt with most shear, for a pull of <paramref name="pull"/> N.</summary>
    public (double Tension, double Shear, double Bolt, double Wall)? Use(double pull, double up, double side)
    {
        var along = (pull * Math.Cos(up) * Math.Cos(side), pull * Math.Cos(up) * Math.Sin(side), pull * Math.Sin(up));
        if (Area <= 0 || Group.Loads(along, Height, Ahead) is not { } loads) return null;
        var uses = loads.Select(l => (l.Tension, l.Shear, Use: Math.Sqrt(Math.Pow(l.Tension / (Proof * Area), 2) + Math.Pow(l.Shear / (Shear * Proof * Area), 2))));
        var worst = uses.MaxBy(u => u.Use);
        return (worst.Tension, worst.Shear, worst.Use, loads.Max(l => l.Shear) / (Diameter * Wall * Yield));
    }

    /// <summary>The pull in N at which the first bolt reaches its proof strength or the wall yields, the worst of straight and askew; what gives; and the worst bolt's
    /// tension and shear for each newton of it.</summary>
    /// <param name="up">Largest angle off the plate, rad.</param>
    /// <param name="side">Largest angle to the side, rad.</param>
    public (double Pull, string Gives, double Tension, double Shear)? Strength(double up, double side, Worksheet w)
    {
        var worst = (Pull: double.PositiveInfinity, Gives: "", Tension: 0.0, Shear: 0.0);
        var (rise, aside) = (0.0, 0.0); // rad
        foreach (var a in Angles(up))
            foreach (var b in Angles(side))
            {
                if (Use(1, a, b) is not { } use) return null;
                var most = Math.Max(use.Bolt, use.Wall);
                if (!(most > 0) || !(1 / most < worst.Pull)) continue;
                worst = (1 / most, use.Bolt >= use.Wall ? "a bolt" : "the frame wall", use.Tension, use.Shear);
                (rise, aside) = (a, b);
            }
        foreach (var (a, b) in new HashSet<(double, double)> { (0, 0), (up, 0), (0, side), (up, side), (rise, aside) })
            if (Use(1, a, b) is { } use)
                w.Line($"worst bolt, {a * 180 / Math.PI:0} deg up, {b * 180 / Math.PI:0} deg aside", "1 / sqrt((T / (Sp As))^2 + (V / (0.577 Sp As))^2) or 1 / (V / (d t Sy))",
                    $"T = {use.Tension} and V = {use.Shear} of the pull, Sp As = {Proof * Area} N, d t Sy = {Diameter * Wall * Yield} N", 1 / Math.Max(use.Bolt, use.Wall), "N");
        return double.IsFinite(worst.Pull) ? worst : null;
    }

    /// <summary>From straight to the largest, a degree at a time: turning and straight shear of a bolt add up worst on the way to a pull square to the side.</summary>
    private static IEnumerable<double> Angles(double largest)
    {
        const double step = Math.PI / 180;
        for (var i = 0; i * step < largest - 1e-9; i++) yield return i * step;
        yield return largest;
    }
}
