namespace Crossmember.Engineering.Driveline;

/// <summary>How to get the numbers that pull and road load rest on, the quickest way first: one wording for all calculations of performance.</summary>
internal static class HowToMeasurePull
{
    public const string TheTorqueCurve = "full-load torque curve of the engine";

    public const string TorqueCurve = "take the maker's curve, or a brake test; where only power is told: torque in lbf ft = 5252 x hp / rpm, two points or more";

    public const string PeakTorque = "take the maker's figure for this engine, or the highest point of a brake test";

    public const string PeakPower = "take the maker's figure for this engine, or the highest point of a brake test";

    public const string Efficiency = "take 0.85 where all power goes through gears; 1 where the torque was measured at the wheels";

    public const string RollingRadius = "roll ten turns of the wheel with the weight on, tape the way and divide by 62.83";

    public const string IdleSpeed = "read a tachometer with the engine warm and in neutral";

    public const string Mass = "drive it over a scale, one axle at a time, and add the readings";

    public const string RollingResistance = "pull it on level ground through a scale and divide by the weight; 0.015 is common on good pavement, 0.05 or more on gravel and sand";

    public const string DragArea = "coast down from 50 mph on a calm day; or take 0.45 to 0.6 times height times width";

    public const string AirDensity = "take 1.2 kg/m3 near sea level; about a tenth less for every 3,500 ft";

    public const string Grip = "take 0.7 on dry pavement or firm dry ground, 0.4 on wet grass or gravel, 0.2 on mud or snow";

    public const string Grade = "ask how steep a climb is wanted: rise over run, 0.4 is 40 %";
}
