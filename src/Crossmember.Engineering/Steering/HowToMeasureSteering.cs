namespace Crossmember.Engineering.Steering;

/// <summary>How to get the numbers of a steering, the quickest way first: one wording for all its calculations.</summary>
internal static class HowToMeasureSteering
{
    public const string KingpinDistance = "tape from the center of one kingpin (or of the upper and lower ball joint) to the other, at the height of the axle";

    public const string Wheelbase = "tape between the hub centers on both sides, wheels straight ahead, and take the mean";

    public const string InnerAngle = "set both front wheels on turn plates, turn to the stop and read the wheel on the inside of the turn; "
        + "or lay a straightedge along the wheel and measure its angle to a string along the vehicle";

    public const string OuterAngle = "at the same stop read the turn plate of the wheel on the outside of the turn";

    public const string Turns = "with the weight on the wheels count turns of the steering wheel from stop to stop";

    public const string BoxRatio = "drag link off, count turns of the steering wheel for a quarter turn of the pitman arm and multiply by four; or read the box's tag";

    public const string PitmanLength = "tape from the center of the box's output shaft to the center of the ball at the end of the pitman arm";

    public const string ArmLength = "tape from the kingpin's axis square to the center of the ball where the drag link meets the steering arm";

    public const string Loads = "weigh each front wheel, loaded as the vehicle will be used";

    public const string Pressure = "read the tire gauge cold, or take what the load table of the tire asks for this load";

    public const string Grip = "take 0.7 on dry pavement; park on rough dry concrete for the worst";

    public const string Efficiency = "take 0.75 for a recirculating-ball box in order, 0.6 for worm and roller or a worn, dry linkage; "
        + "or pull the rim with a spring scale, wheels on plates";

    public const string RimDiameter = "tape across the steering wheel, from middle to middle of the rim";

    public const string Assist = "1 for a manual box; for a powered one pull the rim with a spring scale, engine running and stopped, and divide";

    public const string Caster = "read a caster gauge, wheel turned 20 deg out and in; or set an angle finder on the flat of the kingpin boss or spring pad";

    public const string PitmanPivot = "tape to the box's output shaft at the pitman arm: back from the axle's line, right from the center line, up from the frame datum";

    public const string PitmanEnd = "steering straight, the same three tapings to the ball of the pitman arm";

    public const string ArmBall = "wheels straight and loaded, the same three tapings to the drag link's ball at the steering arm";

    public const string PointsRideHeight = "on the day the linkage was measured: from the frame datum down to the axle center, mean of both sides";

    public const string RideHeight = "measure from the frame datum down to the axle center, weight on the wheels, mean of both sides; comes from the springs where they are known";

    public const string BumpTravel = "measure from the axle to the bump stop with the weight on the wheels";

    public const string FullBumpTravel = "gap to the bump stop and what it squeezes until it is solid: half of a rubber stop's height, or its maker's figure";

    public const string DroopTravel = "lift the frame until the wheels just leave the ground and measure how far the axle went down";

    public const string GuideKind = "look: leaf springs, or links with coil springs";

    public const string GuideX = "tape along the vehicle from the front axle's line to the fixed eye of the spring (not the shackle), or to the frame end of the link; "
        + "ahead of the axle is negative";

    public const string GuideRise = "height of the fixed eye's center over the top leaf at the axle; with links of the frame end over the axle end; "
        + "vehicle level, weight on the wheels; lower is negative";

    public const string Inclination = "read a caster gauge's kingpin scale, or take 8 deg where nothing can be read";
}
