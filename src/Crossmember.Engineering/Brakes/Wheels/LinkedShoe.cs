namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>The first shoe of a duo-servo brake: pressed on by the wheel cylinder above, free on the floating link below, which hands its force to the second shoe.</summary>
/// <remarks>
/// Formula:  pressure cos(f - f0) where positive, f from the level through the drum's center; f0 such that pressure and friction together pull level, as cylinder and link do;
///           with X the level pull and P the sum of the pressure: F + S = k X, e S = h F + mu r k P, so k = F (h + e) / (e X - mu r P)
/// Valid:    rigid shoe and drum; cylinder and link push level; the lining lifts off where the pressure would be negative
/// Source:   docs/derivations/drum-brakes.md
/// </remarks>
/// <param name="Radius">Of the drum, m.</param>
/// <param name="Opening">From the drum's center up to the line of the wheel cylinder, m.</param>
/// <param name="Link">From the drum's center down to the link, m.</param>
/// <param name="Low">Lower end of the lining, rad over the level; negative.</param>
public readonly record struct LinkedShoe(double Radius, double Opening, double Link, double Low, double High)
{
    private const int MostSteps = 60;

    /// <summary>A level pull of one at the middle of the lining, whatever the friction: the idealised factors.</summary>
    public static LinkedShoe Short(double radius, double opening, double link) => new(radius, opening, link, 0, 0);

    /// <summary>Torque of the shoe and force in the link for a cylinder force of 1; not a number where the shoe holds itself on or slides along.</summary>
    public (double Torque, double Link) Under(double friction)
    {
        var (level, sum) = Contact(friction);
        var left = (Link * level) - (friction * Radius * sum);
        if (!(left > 0)) return (double.NaN, double.NaN);
        var k = (Opening + Link) / left;
        return (friction * Radius * k * sum, (k * level) - 1);
    }

    /// <summary>Level pull and sum of the pressure, per unit of its peak; the pull is not a number where the lining ends short of the friction angle.</summary>
    public (double Level, double Sum) Contact(double friction)
    {
        if (High <= Low) return (1, 1);
        var slope = Math.Atan(friction);
        if (-slope <= Low) return (double.NaN, double.NaN);
        var tilt = Tilt(friction, slope);
        var (c, s, sum) = Pressed(tilt);
        return (c - (friction * s), sum);
    }

    /// <summary>Where the pressure is highest, if it were not for the lining's ends: closed for contact all over, searched where an end lifts off.</summary>
    private double Tilt(double friction, double slope)
    {
        var (sl, cl) = Math.SinCos(Low);
        var (sh, ch) = Math.SinCos(High);
        double half = (High - Low) / 2, wave = ((sh * ch) - (sl * cl)) / 2, mixed = ((sh * sh) - (sl * sl)) / 2; // Int cos^2 = half + wave, sin^2 = half - wave, sin cos = mixed
        var all = Math.Atan2(-(mixed + (friction * (half + wave))), half - wave + (friction * mixed));
        if (all - Low <= Math.PI / 2 && High - all <= Math.PI / 2 && all <= Math.PI / 2) return all;
        double low = Low - (Math.PI / 2) + 1e-4, high = High + (Math.PI / 2) - 1e-4, atLow = Off(low, slope), atHigh = Off(high, slope);
        var side = 0;
        for (var i = 0; i < MostSteps && high - low > 1e-13; i++)
        {
            var at = ((low * atHigh) - (high * atLow)) / (atHigh - atLow);
            var off = Off(at, slope);
            if (Math.Abs(off) < 1e-14) return at;
            // False position; an end that stands still twice counts for half.
            if (off > 0) (high, atHigh, atLow, side) = (at, off, side > 0 ? atLow / 2 : atLow, 1);
            else (low, atLow, atHigh, side) = (at, off, side < 0 ? atHigh / 2 : atHigh, -1);
        }
        return (low + high) / 2;
    }

    /// <summary>Sine of the angle by which pressure and friction together pull over the level.</summary>
    private double Off(double tilt, double slope)
    {
        var (c, s, _) = Pressed(tilt);
        return ((s * Math.Cos(slope)) + (c * Math.Sin(slope))) / Math.Sqrt((c * c) + (s * s));
    }

    /// <summary>Level and upright parts and sum of cos(f - tilt) over what of the lining touches.</summary>
    private (double Level, double Upright, double Sum) Pressed(double tilt)
    {
        double from = Math.Max(Low, tilt - (Math.PI / 2)), to = Math.Min(High, tilt + (Math.PI / 2));
        var (s0, c0) = Math.SinCos(tilt);
        var (s1, c1) = Math.SinCos((2 * from) - tilt);
        var (s2, c2) = Math.SinCos((2 * to) - tilt);
        return ((((to - from) * c0) + ((s2 - s1) / 2)) / 2, (((to - from) * s0) - ((c2 - c1) / 2)) / 2, Math.Sin(to - tilt) - Math.Sin(from - tilt));
    }
}
