namespace Crossmember.Engineering.Driveline;

/// <summary>How to get what loads and turns a shaft, the quickest way first: one wording for all its calculations.</summary>
internal static class HowToMeasureShafts
{
    public const string Converter = "1 for a clutch; for an automatic read the converter maker's stall torque ratio, about 2 is usual";

    public const string AxleLoads = "put the axle on a scale in each state of load";

    public const string TubeDiameter = "caliper the tube between the welds";

    public const string TubeWall = "read the tube maker's mark or invoice; or caliper a cut end";

    public const string ShaftLength = "tape from cross center to cross center with the vehicle at ride height, weight on its wheels";

    public const string TransferAngle =
        "at ride height put an angle finder on the output flange, then on the shaft: the difference is the angle; a constant velocity joint counts as 0";

    public const string AxleAngle = "at ride height put an angle finder on the pinion flange, then on the shaft: the difference is the angle; a "
        + "constant velocity joint counts as 0";

    public const string YokeOffset = "lay a straightedge across each yoke of the shaft, put an angle finder on both and take the difference; 0 is in phase";

    public const string ShearStrength = "ask the shaft maker; where only the yield strength in tension is known, take 0.58 of it";
}
