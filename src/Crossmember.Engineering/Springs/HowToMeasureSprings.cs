namespace Crossmember.Engineering.Springs;

/// <summary>How to get what springs are worked from, the quickest way first, and what a spring job always asks for: one wording for all its calculations.</summary>
internal static class HowToMeasureSprings
{
    public const string Practice = "common practice, no source";

    /// <summary>The same everywhere, so that all springs calculations reckon with one weight.</summary>
    public const double Gravity = 9.80665;

    public const string Axle = "axle";

    public const string WheelRate = "state the spring's own rate or its dimensions; or weigh the axle and tape the frame over it twice, empty and loaded",
        SpringLoads = "weigh the axle in each state of load, take off axle, wheels and half of the springs, and halve it",
        AxleLoad = "put the axle on a scale in this state of load, vehicle level",
        UnsprungMass = "weigh axle, wheels, tires and brakes when they are off, and add half of the springs; with drive and leaf springs 300 to 450 lb is usual",
        MotionRatio = "raise the wheel 2 in and tape how far the spring moves: travel of the spring over travel of the wheel; 1 for springs on a solid axle",
        Height = "on level ground bounce the vehicle, let it settle, then tape from the axle center up to the frame datum, both sides, and take the mean",
        HeightLoad = "put the axle on the scale in the same state in which the height was taped",
        StressLimit = "ask the spring works for the stress that it allows in its steel at this load; do not guess it from hardness",
        ShearModulus = "take 79.3 GPa for steel", TireRate = "ask the tire's maker; or weigh the wheel at two loads and tape the hub height at each: about 1,400 lbf/in is usual",
        HelperRate = "work the helper out as a leaf pack by itself, or ask its maker", HelperClearance = "tape the gap between helper and its pads in the state in which the height was taped",
        RollCenter = "from the frame datum at the axle, up positive: of two leaf springs to their eyes' line at the axle, of a track bar to its height at the middle of the vehicle";

    /// <summary>What goes wrong with a spring job is seldom the spring.</summary>
    public const string UBolts = "New U-bolts and nuts whenever a spring comes off: they stretch once and are never used again. Torque to the maker's figure, and again after 500 miles.",
        StoredEnergy = "A loaded spring can kill. Support the frame by rated stands and unload the spring fully before a bolt is loosened; coils only in a proper compressor.",
        Stops = "Never leave bump stops or limiting straps off: they keep axle, shafts, hoses and springs from going where they break.",
        Qualified = "Springs other than the maker's change handling, braking and headlamp aim: a qualified person must look at the vehicle, and local rules on suspension changes come first.";

    public static UnitsNet.Length? Meters(double? x) => x is { } v ? UnitsNet.Length.FromMeters(v) : null;

    public static UnitsNet.ForcePerLength? Rate(double? newtonsPerMeter) => newtonsPerMeter is { } k ? UnitsNet.ForcePerLength.FromNewtonsPerMeter(k) : null;

    public static UnitsNet.Pressure? Pascals(double? p) => p is { } v ? UnitsNet.Pressure.FromPascals(v) : null;
}
