namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>A deceleration in g that brakes and road give together.</summary>
/// <param name="Z">What is had.</param>
/// <param name="Brakes">What the brakes alone would make.</param>
/// <param name="Capped">Whether the road, not the brakes, sets the end.</param>
public readonly record struct Reached(double Z, double Brakes, bool Capped)
{
    /// <param name="cap">Where the first braked axle locks; not a number or infinite where none does.</param>
    public static Reached Of(double brakes, double cap) => brakes > cap ? new(cap, brakes, true) : new(brakes, brakes, false);
}
