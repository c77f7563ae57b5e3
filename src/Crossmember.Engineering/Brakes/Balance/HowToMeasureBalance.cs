namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>What the calculations of the balance ask for, in the same words everywhere.</summary>
internal static class HowToMeasureBalance
{
    public const string FrontForce = "braking force of the front axle at 1000 psi over its threshold", RearForce = "braking force of the rear axle at 1000 psi over its threshold",
        FrontThreshold = "line pressure that the front brakes take before they brake", RearThreshold = "line pressure that the rear brakes take before they brake",
        Valve = "valve in the rear line", Knee = "line pressure at which the rear valve begins in this condition", Slope = "pressure behind the rear valve gained per pressure before it, over its knee",
        Metering = "line pressure below which a metering valve holds the front brakes off", Total = "total mass", CenterX = "center of gravity behind the front axle",
        Height = "height of the center of gravity over the ground", Wheelbase = "wheelbase", Rule = "rule that the brakes are held against", Grip = "grip of the tires on the road as a share of their load";

    public const string RearShare = "pressure of the rear circuit over that of the front", HowRearShare = "comes from the master cylinder; other than 1 only with two cylinders on a bar";

    public const string Forces = "comes from the brakes of its wheels: bores, radii and friction", Thresholds = "gauge at the bleeder: the pressure at which a jacked wheel starts to drag; about 0.4 MPa for drums",
        ValveKind = "look for a valve in the line to the rear axle and for a rod or spring from it to the axle; none where there is none",
        HowKnee = "gauge at a front and a rear bleeder: the pressure at which the rear falls behind; nothing where there is no valve",
        HowSlope = "gauge at a front and a rear bleeder at two pressures over the knee: gain behind over gain in front; nothing where there is no valve",
        HowMetering = "gauge at a front bleeder; 0 where there is none", HowTotal = "drive it over a scale, one axle at a time, and add the readings",
        HowCenter = "comes from the axle loads and the wheelbase", HowHeight = "weigh it again with one axle raised by about 600 mm", HowWheelbase = "tape from hub center to hub center on both sides and take the mean",
        HowRule = "pick the rule: the one that applied to the vehicle, or that its inspector will look at; none where none does", HowGrip = "0.7 to 0.8 on dry pavement, 0.4 to 0.5 wet, 0.2 on packed snow",
        HowLost = "comes from pedal, master cylinder and fluid; or open that circuit's bleeder in the shop and gauge the other with the pedal down", HowPedal = "comes from pedal, booster and master cylinder; or gauge the line pressure over the pedal force";

    public const string NoValve = "none", FixedValve = "fixed", AdjustableValve = "adjustable", LoadValve = "load-sensing";
}
