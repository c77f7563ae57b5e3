using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Worked examples of a drive. All figures of the vehicle are invented.</summary>
internal static class DriveHeatExamples
{
    private static readonly Dictionary<string, string> s_vehicle = new()
    {
        ["mass"] = "2100 kg", ["forces"] = """{"front":"12642.9 N","rear":"5442.7 N"}""", ["thresholds"] = """{"front":"0 MPa","rear":"0.4 MPa"}""", ["valve"] = "none",
        ["frontKind"] = """{"left":"disc","right":"disc"}""", ["rearKind"] = """{"left":"drum","right":"drum"}""", ["heatMasses"] = """{"front":"7.5 kg","rear":"9 kg"}""",
        ["rotorShares"] = """{"front":"0.98","rear":"0.93"}""", ["cooling"] = """{"front":"800 W","rear":"600 W"}""", ["coolingAreas"] = """{"front":"1000 cm2","rear":"1300 cm2"}""",
        ["liningAreas"] = """{"front":"100 cm2","rear":"300 cm2"}""", ["frontLetters"] = """{"left":"FE","right":"FE"}""", ["rearLetters"] = """{"left":"EE","right":"EE"}""",
        ["frontSensitivity"] = """{"left":"1","right":"1"}""", ["rearSensitivity"] = """{"left":"1.4","right":"1.4"}""", ["fluidGrade"] = "DOT 4", ["fluidState"] = "old",
        ["dragArea"] = "1.3 m2", ["centerX"] = "1.248 m", ["centerHeight"] = "0.76 m", ["wheelbase"] = "2.6 m", ["grip"] = "0.7",
        ["cutIn"] = "0 N", ["jumpIn"] = "0 MPa", ["knee"] = "0 N", ["kneePressure"] = "0 MPa", ["plainPressure"] = "6.5 MPa", ["deadLoss"] = "0 MPa",
    };

    public static IReadOnlyList<Example> All { get; } =
    [
        new(With([("grade", "0.07"), ("length", "6 km"), ("speed", "60 km/h"), ("stopsCount", "5"), ("stopsFrom", "50 mph"), ("stopsTo", "25 mph"), ("interval", "45 s")]),
            new Dictionary<string, double>
            {
                ["frontRotor"] = 464.63, ["frontLining"] = 222.61, ["frontFluid"] = 107.39, ["rearRotor"] = 143.40, ["rearLining"] = 123.04, ["rearFluid"] = 49.80,
                ["heat"] = 7437.4, ["frontHotShare"] = 0.75, ["rearHotShare"] = 1,
            },
            0.001, "Heun steps of 0.02 s in plain Python, docs/derivations/brake-heat.md", Provenance.Independent),
    ];

    private static Dictionary<string, string> With((string Input, string Value)[] more)
    {
        var all = new Dictionary<string, string>(s_vehicle);
        foreach (var (input, value) in more) all[input] = value;
        return all;
    }
}
