namespace Crossmember.Engineering.Steering;

/// <summary>Where an axle goes as it rises: back and forth on the arc of its springs or links, sideways on that of a track bar.</summary>
/// <param name="Along">From the middle of the arc to the axle, along the vehicle, m; 0 for an axle that goes straight up.</param>
/// <param name="Rise">The axle over the middle of that arc, m.</param>
/// <param name="Across">Track bar: axle end from frame end, across the vehicle, m; 0 for none.</param>
/// <param name="BarRise">Track bar: axle end over frame end, m.</param>
/// <remarks>The axle is taken to keep its attitude; wind-up under braking is left out. Derivation: <c>docs/derivations/steering-linkage.md</c>.</remarks>
internal readonly record struct LinkageGuide(double Along, double Rise, double Across, double BarRise)
{
    /// <summary>A leaf spring with a fixed eye: the axle moves about a point a quarter of the way from the eye, at the eye's height.</summary>
    /// <param name="eye">Eye behind (positive) or ahead of the axle, m.</param>
    /// <param name="eyeRise">Eye over the top leaf at the axle, m.</param>
    public static LinkageGuide Leaf(double eye, double eyeRise)
    {
        var length = Math.Abs(eye) > 0 ? Math.Abs(eye) + (2 * eyeRise * eyeRise / (3 * Math.Abs(eye))) : 0; // of the leaf itself
        var arm = 0.75 * length;
        return new(-Math.Sign(eye) * Math.Sqrt(Math.Max(0, (arm * arm) - (eyeRise * eyeRise))), -eyeRise, 0, 0);
    }

    /// <summary>Links that keep the axle's attitude: the axle moves about their frame ends.</summary>
    public static LinkageGuide Links(double frameEnd, double frameEndRise) => new(-frameEnd, -frameEndRise, 0, 0);

    /// <summary>How far the axle moves when it rises by t (m); null where spring, link or bar cannot follow.</summary>
    public Point3? Moved(double t)
    {
        if (Turned(Along, Rise, t) is not { } x || Turned(Across, BarRise, t) is not { } y) return null;
        return new(x, y, t);
    }

    /// <summary>How much the level part of an arm changes when its end rises by t.</summary>
    private static double? Turned(double level, double rise, double t)
    {
        if (level == 0) return 0;
        var square = (level * level) + (rise * rise) - ((rise + t) * (rise + t));
        return square <= 0 ? null : (Math.Sign(level) * Math.Sqrt(square)) - level;
    }
}
