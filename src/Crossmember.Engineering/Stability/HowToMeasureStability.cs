namespace Crossmember.Engineering.Stability;

/// <summary>How the inputs of stability are got, and the words of caution that belong to every one of its answers.</summary>
internal static class HowToMeasureStability
{
    public const string Height = "weigh once level and once with one axle lifted two feet or more, springs blocked: rated lift, two people",
        Offset = "weigh each wheel: half the track times right less left, over the mass",
        Track = "tape between the tread centers of the two tires, at hub height front and back of the tire, and take the mean",
        Center = "rear axle load over total mass, times the wheelbase",
        Shift = "comes from springs, roll centers and the height of the center of gravity: the sprung mass's share, times its height over the roll axis, times the lean";

    /// <summary>Degrees that motion, soft ground and tire squash may take off a static angle. Common practice, no source.</summary>
    public const double LeastTaken = 5, MostTaken = 15;

    public const string UpperBound = "A static tip angle is an upper bound and never a safe slope: bumps, ruts, soft ground, steering and motion take 5 to 15 degrees off it (common practice, no source).",
        NotForPeople = "Judge no slope by this with people in or near the vehicle; changed suspension, tires and roof loads may need approval by a qualified inspector and local law decides.";
}
