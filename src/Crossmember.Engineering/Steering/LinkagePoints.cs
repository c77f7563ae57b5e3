using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>Makes the points of a linkage from what was taped, and names them when something does not fit.</summary>
internal static class LinkagePoints
{
    public const string Across = "across", Upright = "upright", Lengthwise = "lengthwise", Leaf = "leaf", Links = "links";

    public const string ArmBall = "the ball at the steering arm", PitmanBall = "the ball at the pitman arm";

    /// <summary>Taken where nobody has read the caster; common practice, no source.</summary>
    public static Angle UsualCaster { get; } = Angle.FromDegrees(3);

    public static Point3 Of(Length x, Length y, Length z) => new(x.Meters, y.Meters, z.Meters);

    /// <summary>Direction of the box's output shaft.</summary>
    public static Point3 Shaft(string lies) => lies switch { Across => new(0, 1, 0), Upright => new(0, 0, 1), _ => new(1, 0, 0) };

    public static LinkageGuide Guide(string kind, Length x, Length rise) =>
        kind == Leaf ? LinkageGuide.Leaf(x.Meters, rise.Meters) : LinkageGuide.Links(x.Meters, rise.Meters);

    /// <summary>How a rod that does not reach is told.</summary>
    public static string Short(double gap) => gap > 0 ? $"{1000 * gap:0.#} mm too long" : $"{-1000 * gap:0.#} mm too short";
}
