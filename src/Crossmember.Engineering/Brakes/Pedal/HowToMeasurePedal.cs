namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>How to get the numbers of pedal, booster and master cylinder, the quickest way first: one wording for all their calculations.</summary>
internal static class HowToMeasurePedal
{
    public const string Force = "choose it, or put a bathroom scale between foot and pedal";

    public const string Ratio = "tape pivot to middle of the pad, and pivot to push-rod pin; divide the first by the second";

    public const string Efficiency = "grease the pivots and take 0.9; a gauge at a bleeder with a scale on the pedal tells it truly";

    public const string MasterBore = "read it off the casting, or measure the bore with the cylinder open";

    public const string MasterKind = "look at it: two outlets from one bore is tandem; a bore that steps up in width is stepped; two cylinders side by side on a bar are twin";

    public const string MasterEfficiency = "seals take about 3 %; a gauge at a bleeder tells";

    public const string TwinBore = "read the bore off each of the two cylinders";

    public const string BarArm = "measure along the bar from the middle of its bearing to this push rod";

    public const string BoosterKind = "look at it: a drum with a hose to the manifold is a vacuum booster; one fed by the steering pump is hydraulic; a rod straight into the cylinder is none";

    public const string Vacuum = "tee a gauge into the booster hose at warm idle";

    public const string Altitude = "take it off a map";

    public const string Diaphragm = "measure the shell outside and take 20 mm off, or read the size off the tag";

    public const string BoosterRod = "measure the tube that passes through the diaphragm when the booster is open; else the neck behind the shell";

    public const string BoosterCurve = "ask the booster's rebuilder; else a gauge at a bleeder and a scale on the pedal tell it";

    public const string BoosterPressure = "tee a gauge into the feed of the booster with somebody turning the steering against its stop";

    public const string BoosterPiston = "ask the booster's rebuilder, or measure it open";

    public const string HardPressure = "take 6.9 MPa, which is 1000 psi in the lines: as much as hard braking asks of most vehicles (common practice, no source)";

    public const string FloorTravel = "tape the pad to the floor board with the carpet in, along the pad's way";

    public const string FreePlay = "push the pedal with one finger until the push rod touches: read the way on a ruler at the pad";

    public const string ChamberStroke = "push each piston to its stop with a rod on the bench, outlets open, and read the way; or ask the rebuilder";

    public const string MasterStroke = "push the piston to its stop with a rod on the bench, outlets open, and read the way";

    public const string Gauge = "screw a gauge into the bleeder, put a scale on the pedal and read at four forces up to a hard push, engine at idle";

    public const string DeadGauge = "stop the engine, pump the pedal until it is hard, and read the same forces again";

    public const string LineKey = "it follows from pedal, booster and master cylinder";

    public const string AxleForce = "it follows from calipers or drums, friction and tires";
}
