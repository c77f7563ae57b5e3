namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>The ring of a disc that its pads sweep, and the radius at which their friction may be thought to act.</summary>
/// <remarks>
/// Formula:  worn in (p r alike everywhere): re = (ro + ri) / 2; new (p alike everywhere): re = 2/3 (ro^3 - ri^3) / (ro^2 - ri^2)
/// Valid:    pads that are pieces of a ring; the larger one is that of new pads
/// Source:   derived, docs/derivations/drum-brakes.md
/// </remarks>
/// <param name="Outer">Radius, m.</param>
public readonly record struct PadRing(double Outer, double Inner)
{
    public double WornIn => (Outer + Inner) / 2;

    // (ro^3 - ri^3) / (ro^2 - ri^2) with ro - ri taken out, so that a ring of no width has an answer too.
    public double New => 2.0 / 3 * ((Outer * Outer) + (Outer * Inner) + (Inner * Inner)) / (Outer + Inner);
}
