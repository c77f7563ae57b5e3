using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Springs;

/// <summary>A pack of leaves as two cantilevers back to back: full-length leaves bend as even beams, graduated ones as a beam of uniform strength.</summary>
/// <remarks>
/// At one load the graduated leaves alone would sink by 6 W l^3 / (E ng b t^3), the full-length ones by 4 W l^3 / (E nf b t^3); pressed together they sink alike and
/// their stiffnesses add (Khurmi and Gupta, Machine Design, leaf springs, from memory; derived in <c>docs/derivations/springs.md</c>). SI.
/// </remarks>
internal readonly record struct LeafBeam(double Leaves, double Full, double Width, double Thickness, double Modulus, double Half)
{
    private double Weighted => (2 * (Leaves - Full)) + (3 * Full);

    /// <summary>N/m at the seat.</summary>
    public double Rate => Modulus * Width * Math.Pow(Thickness, 3) * Weighted / (6 * Math.Pow(Half, 3));

    /// <summary>Largest bending stress (Pa) under a central load (N).</summary>
    public double Stress(double load, bool nipped)
    {
        double moment = load / 2 * Half, section = Width * Thickness * Thickness;
        return nipped || Full == 0 ? 6 * moment / (Leaves * section) : 18 * moment / (section * Weighted);
    }

    /// <summary>Even steps from the clamp to the eyes.</summary>
    /// <param name="dead">Clamped length that does not bend, m.</param>
    public Members<Length> Lengths(double dead)
    {
        var steps = (int)(Leaves - Full) + (Full > 0 ? 1 : 0);
        var length = 2 * Half;
        return new(Enumerable.Range(1, steps).Select(i => ($"{i}", Length.FromMeters((length * i / steps) + dead))));
    }
}
