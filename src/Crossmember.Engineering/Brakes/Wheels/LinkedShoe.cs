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

    /// <summary>Friction from which on the lining finds no hold: pressure and friction together cannot pull level.</summary>
    public double Slides => High <= Low ? double.PositiveInfinity : Low < 0 ? Math.Tan(-Math.Max(Low, -1.57)) : 0;

    /// <summary>Friction up to which a lining that lies all below the level finds no hold either.</summary>
    public double Catches => High < 0 && High > Low ? Math.Tan(-Math.Max(High, -1.57)) : 0;

    /// <summary>What is left of the pressure's moment about the hub after friction, over its sum, m; falls with friction, and the shoe holds itself on where it is gone.</summary>
    public double Left(double friction)
    {
        var (level, sum) = Contact(friction);
        return (Link * level / sum) - (friction * Radius);
    }

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
        if (friction >= Slides || (High < 0 && friction <= Catches)) return (double.NaN, double.NaN);
        var slope = Math.Atan(friction);
        var tilt = Tilt(friction, slope);
        var (c, s, sum) = Pressed(tilt);
        return (c - (friction * s), sum);
    }

    /// <summary>Where the pressure is highest, if it were not for the lining's ends: closed for contact all over, by Newton's method between two bounds where an end lifts off.</summary>
    private double Tilt(double friction, double slope)
    {
        var (sl, cl) = Math.SinCos(Low);
        var (sh, ch) = Math.SinCos(High);
        double half = (High - Low) / 2, wave = ((sh * ch) - (sl * cl)) / 2, mixed = ((sh * sh) - (sl * sl)) / 2; // Int cos^2 = half + wave, sin^2 = half - wave, sin cos = mixed
        var tilt = Math.Atan2(-(mixed + (friction * (half + wave))), half - wave + (friction * mixed));
        double low = Low - (Math.PI / 2), high = High + (Math.PI / 2);
        if (tilt >= High - (Math.PI / 2) && tilt <= Low + (Math.PI / 2)) return tilt;
        if (!(tilt > low && tilt < high)) tilt = (low + high) / 2;
        for (var i = 0; i < MostSteps; i++)
        {
            var (pull, change) = Upward(tilt, slope);
            if (pull > 0) high = tilt;
            else low = tilt;
            var next = tilt - (pull / change);
            // Where nothing touches any more the pull is naught as well: what leads toward that is halved instead.
            if (!(next > low && next < high) || change <= 0) next = (low + high) / 2;
            if (Math.Abs(next - tilt) < 1e-12) return next;
            tilt = next;
        }
        return tilt;
    }

    /// <summary>Int cos(f - tilt) sin(f + slope) over what touches, the upward pull of pressure and friction but for a cosine, and how it changes with the tilt.</summary>
    private (double Pull, double Change) Upward(double tilt, double slope)
    {
        double from = Math.Max(Low, tilt - (Math.PI / 2)), to = Math.Min(High, tilt + (Math.PI / 2)), wide = to - from;
        var (s0, c0) = Math.SinCos(tilt + slope);
        var (s1, c1) = Math.SinCos((2 * from) - tilt + slope);
        var (s2, c2) = Math.SinCos((2 * to) - tilt + slope);
        return ((((c1 - c2) / 2) + (wide * s0)) / 2, ((wide * c0) - ((s2 - s1) / 2)) / 2);
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
