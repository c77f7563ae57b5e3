namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>A rigid brake shoe that turns about a fixed pivot: what its lining makes of the moment that presses it on.</summary>
/// <remarks>
/// Formula:  pressure p1 sin t, t from the pivot; per unit of p1, width and radius: normal moment a Int sin^2, friction moment mu Int sin (r - a cos), torque mu r Int sin;
///           leading p1 = M / (normal - mu friction), trailing M / (normal + mu friction); it holds itself on where mu friction reaches normal
/// Valid:    rigid shoe and drum, lining worn in over all of its length, Coulomb friction
/// Source:   docs/derivations/drum-brakes.md; the integrals are those of Shigley, Mechanical Engineering Design, ch. 16 (from memory)
/// </remarks>
/// <param name="Normal">Moment of the normal pressure about the pivot, m per unit.</param>
/// <param name="Friction">Moment of the friction about the pivot for a friction of 1.</param>
/// <param name="Turning">Moment of the friction about the drum's center for a friction of 1.</param>
public readonly record struct PivotedShoe(double Normal, double Friction, double Turning)
{
    /// <param name="radius">Of the drum, m.</param>
    /// <param name="pivot">From the drum's center to the pivot, m.</param>
    /// <param name="from">Where the lining begins, from the pivot, rad.</param>
    public static PivotedShoe Of(double radius, double pivot, double from, double to)
    {
        var (s1, c1) = Math.SinCos(from);
        var (s2, c2) = Math.SinCos(to);
        double squares = ((to - from) - ((s2 * c2) - (s1 * c1))) / 2; // Int sin^2
        return new(pivot * squares, (radius * (c1 - c2)) - (pivot * ((s2 * s2) - (s1 * s1)) / 2), radius * (c1 - c2));
    }

    /// <summary>All of the pressure at a right angle from the pivot, as if the lining were short: the idealised factors.</summary>
    public static PivotedShoe Short(double radius, double pivot) => new(pivot, radius, radius);

    /// <summary>Friction at which the leading shoe holds itself on.</summary>
    public double Locks => Normal / Friction;

    /// <summary>Torque in N m of the shoe that the drum drags into itself, under a moment in N m about the pivot; not a number from <see cref="Locks"/> on.</summary>
    public double Leading(double moment, double friction) =>
        Normal - (friction * Friction) is > 0 and var left ? friction * Turning * moment / left : double.NaN;

    public double Trailing(double moment, double friction) => friction * Turning * moment / (Normal + (friction * Friction));
}
