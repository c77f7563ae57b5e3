namespace Crossmember.Engineering.Mass;

/// <summary>Static balance on level ground of a total mass between two axles, and of an axle's share between its two wheels.</summary>
/// <remarks>x is measured to the rear from the front axle, y to the right of the center line; derived in <c>docs/derivations/axle-and-wheel-load.md</c>.</remarks>
internal readonly record struct AxleBalance(double Total, double MomentX, double Wheelbase)
{
    public const string FrontAxle = "front", RearAxle = "rear", LeftSide = "left", RightSide = "right";

    /// <summary>How the inputs are got: one wording for both calculations.</summary>
    public const string HowTotal = "drive it over a scale, one axle at a time, and add the readings",
        HowMomentX = "multiply the weighed rear axle load by the wheelbase",
        HowMomentY = "weigh each wheel; multiply half the track by right less left, axle by axle, and add",
        HowWheelbase = "tape from hub center to hub center, wheels straight ahead, both sides, and take the mean",
        HowTrack = "tape between the tread centers of the two tires, at hub height front and back of the tire, and take the mean";

    /// <summary>Load on the rear axle, kg.</summary>
    public double Rear => MomentX / Wheelbase;

    /// <summary>Load on the front axle, kg.</summary>
    public double Front => Total - Rear;

    public double On(string axle) => axle == FrontAxle ? Front : Rear;

    /// <summary>Share of an axle's load on one side; the center of gravity lies <paramref name="y"/> (m) to the right, the wheels <paramref name="track"/> (m) apart.</summary>
    public static double Share(string side, double y, double track) => 0.5 + ((side == RightSide ? y : -y) / track);
}
