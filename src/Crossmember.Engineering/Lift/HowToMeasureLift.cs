namespace Crossmember.Engineering.Lift;

/// <summary>How to get what a change of height bears on, the quickest way first: one wording for all its calculations.</summary>
internal static class HowToMeasureLift
{
    public const string RideHeight = "tape from the frame datum to the axle center, weight on the wheels";

    public const string Original = "take it from the maker's handbook; or tape an untouched vehicle; or add up blocks, shackles and springs";

    public const string OutputHeight = "tape from the frame datum to the cross of the joint at the transfer case; negative beneath the datum";

    public const string PinionHeight = "tape from the axle center up to the cross of the joint at the pinion";

    public const string Run = "drop a plumb line from both crosses and tape along the floor";

    public const string OutputSlope = "put an angle finder on the output flange, frame level; positive slopes down toward the axle";

    public const string PinionAngle = "put an angle finder on the pinion flange, frame level; positive points the nose up";

    public const string Bump = "tape from the bump stop to what it meets";

    public const string FullBump = "gap to the bump stop and what it squeezes until it is solid: half of a rubber stop's height, or its maker's figure";

    public const string Droop = "jack the frame until the wheel hangs and tape how far the axle came down";

    public const string MeasuredHeight = "tape the ride height on the day the shaft was taped";
}
