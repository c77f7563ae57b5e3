using System.Text.Json.Nodes;

namespace Crossmember.Engineering.Tests.Brakes.Balance;

/// <summary>The truck of docs/derivations/brake-balance.md as a sheet would hand it over; anything may be put in its place.</summary>
internal static class Sheet
{
    private static readonly (string, string)[] s_truck =
    [
        ("frontForce", "12642.9 N"), ("frontThreshold", "0 MPa"), ("rearForce", "5442.7 N"), ("rearThreshold", "0.4 MPa"), ("metering", "0 MPa"), ("total", "2100 kg"), ("centerX", "1.248 m"),
        ("height", "0.76 m"), ("wheelbase", "2.6 m"),
    ];

    private static readonly (string, string)[] s_pedal =
        [("cutIn", "22.556 N"), ("jumpIn", "0.67 MPa"), ("knee", "172.932 N"), ("kneePressure", "6.4129 MPa"), ("plainPressure", "3.3975 MPa"), ("deadLoss", "0.38286 MPa")];

    /// <param name="valve">Kind; a fixed one begins at 3.5 MPa with slope 0.35.</param>
    /// <param name="instead">Null takes an input away.</param>
    public static string Of(string valve, params (string Input, string? Value)[] instead) => Made(valve, false, instead);

    /// <summary>With the pedal line of a booster at 70 kPa.</summary>
    public static string WithPedal(string valve, params (string Input, string? Value)[] instead) => Made(valve, true, instead);

    private static string Made(string valve, bool pedal, (string Input, string? Value)[] instead)
    {
        var sheet = new JsonObject { ["valve"] = valve };
        foreach (var (name, value) in s_truck) sheet[name] = value;
        if (valve != "none") (sheet["valveKnee"], sheet["valveSlope"]) = ("3.5 MPa", "0.35");
        if (pedal) foreach (var (name, value) in s_pedal) sheet[name] = value;
        foreach (var (name, value) in instead)
            if (value is null) sheet.Remove(name);
            else sheet[name] = value;
        return sheet.ToJsonString();
    }
}
