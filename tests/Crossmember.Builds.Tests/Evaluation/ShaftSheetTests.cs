using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Rolling tires and shafts through the sheet: the cases of docs/checks.md by the way a builder states them.</summary>
public sealed class ShaftSheetTests
{
    // 2150 kg, 55 % of it on the rear axle.
    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"967.5 kg","rear":"1182.5 kg"},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
        """;

    private const string Facts = """
        "wheel.*.*.tire.size":"33x10.50R15","axle.*.ratio":4.11,"engine.peak-torque":"330 N m","gearbox.1.ratio":5.15,"gearbox.2.ratio":3,"gearbox.3.ratio":1.7,
        "gearbox.4.ratio":1,"gearbox.5.ratio":0.8,"transfer.high.ratio":1,"transfer.low.ratio":2.28,"duty.cruise-speed":"65 mph"
        """;

    // Derived: 3.05 x 838.2 mm roll on 406.88 mm; 0.7 x 1182.5 kg x 9.80665 x 0.40688 / 4.11 = 803.6 N m at the rear propeller shaft, 657.5 N m at the front one.
    [Fact]
    public void What_a_builder_states_comes_out_as_the_torque_in_each_propeller_shaft()
    {
        var sheet = Vehicle(""" "axle.rear.propshaft.joint-rating":"600 lbf ft","axle.front.propshaft.joint-rating":"480 lbf ft" """);
        Assert.Equal(406.88, Opened.Told(sheet, "axle.rear.rolling-radius"), 0.005);
        Assert.Equal(803.6, Opened.Told(sheet, "axle.rear.propshaft.torque"), 0.05);
        Assert.Equal(657.5, Opened.Told(sheet, "axle.front.propshaft.torque"), 0.05);
        Assert.Equal(Verdict.Pass, Verdicts(sheet)["driveline.propshaft-torque[axle=rear]/joint-rating"]);
        Assert.Equal(Verdict.Fail, Verdicts(sheet)["driveline.propshaft-torque[axle=front]/joint-rating"]); // 657.5 N m are 485 lb-ft
    }

    [Fact]
    public void The_heaviest_condition_counts()
    {
        // 200 kg over the rear axle in the loaded condition: 0.7 x 1382.5 x 9.80665 x 0.40688 / 4.11 = 939.5 N m.
        var sheet = Vehicle("", """ "conditions":{"loaded":[{"id":"cargo","mass":"200 kg","at":["2560 mm","0 mm","800 mm"]}]}, """);
        Assert.Equal(939.5, Opened.Told(sheet, "axle.rear.propshaft.torque"), 0.05);
        Assert.Equal(657.5, Opened.Told(sheet, "axle.front.propshaft.torque"), 0.05);
    }

    [Fact]
    public void A_measured_circumference_hides_the_rule_and_the_larger_tire_gears_the_axle()
    {
        var sheet = Vehicle(""" "wheel.rear.left.tire.rolling-circumference":"101 in","wheel.rear.right.tire.rolling-circumference":"2560 mm" """);
        Assert.Equal(101 * 25.4 / (2 * Math.PI), Opened.Told(sheet, "axle.rear.rolling-radius"), 1e-9);
        Assert.Equal(406.88, Opened.Told(sheet, "axle.front.rolling-radius"), 0.005);
        Assert.DoesNotContain(sheet.Findings(), f => f.Id.StartsWith("model/differs", StringComparison.Ordinal));
        // 97 in where the rule says 100.65: more than 2 % apart, so one of the two is wrong.
        Assert.Equal(Verdict.Caution, Verdicts(Vehicle(""" "wheel.rear.left.tire.rolling-circumference":"97 in" """))["model/differs[wheel.rear.left.tire.rolling-circumference]"]);
    }

    [Fact]
    public void The_speeds_of_the_gearing_keep_the_nominal_diameter()
    {
        double Cruise(Sheet sheet) => sheet.Instances.Single(i => i?.Instance.Id == "driveline.engine-speed[gear=4,range=high]")!.Outcome.Outputs[0].Number * 30 / Math.PI;
        Assert.Equal(2721, Cruise(Vehicle("")), 0.5);
        Assert.Equal(2721, Cruise(Vehicle(""" "wheel.*.*.tire.rolling-circumference":"101 in" """)), 0.5);
    }

    // 8098 rpm and 2803 rpm at 65 mph (derived), joints at 4 and 3.5 deg in phase: sqrt(16 - 12.25) = 1.94 deg.
    [Fact]
    public void Tape_calipers_and_angle_finder_settle_the_shaft()
    {
        var verdicts = Verdicts(Vehicle("""
            "axle.rear.propshaft.length":"1250 mm","axle.rear.propshaft.tube-diameter":"76.2 mm","axle.rear.propshaft.tube-wall":"2.1 mm",
            "axle.rear.propshaft.transfer-angle":"4 deg","axle.rear.propshaft.axle-angle":"3.5 deg","axle.rear.propshaft.yoke-offset":"0 deg",
            "axle.rear.shaft.diameter":"32 mm","axle.rear.shaft.shear-strength":"70 ksi","axle.rear.shaft.joint-rating":"2000 lbf ft"
            """));
        Assert.Equal(Verdict.Pass, verdicts["driveline.propshaft-critical-speed[axle=rear]/cruise"]);
        Assert.All(["ends", "equivalent", "phase"], check => Assert.Equal(Verdict.Pass, verdicts[$"driveline.joint-angles[axle=rear]/{check}"]));
        // 74.5 ksi and 2436 lb-ft with a locker, half of it without: good without one.
        Assert.Equal(Verdict.Caution, verdicts["driveline.axle-shaft-torque[axle=rear]/shear"]);
        Assert.Equal(Verdict.Caution, verdicts["driveline.axle-shaft-torque[axle=rear]/joint-rating"]);
    }

    [Fact]
    public void A_sheet_without_a_word_on_shafts_has_seven_open_questions_an_axle_and_no_more()
    {
        var sheet = Opened.Vehicle("").Sheet();
        string[] checks =
        [
            "driveline.axle-shaft-torque/joint-rating", "driveline.axle-shaft-torque/shear", "driveline.joint-angles/ends", "driveline.joint-angles/equivalent",
            "driveline.joint-angles/phase", "driveline.propshaft-critical-speed/cruise", "driveline.propshaft-torque/joint-rating",
        ];
        foreach (var axle in (string[])["front", "rear"])
            Assert.Equal(checks, sheet.Findings().Where(f => f.Id.Contains($"[axle={axle}]", StringComparison.Ordinal) && f.Id.StartsWith("driveline.", StringComparison.Ordinal))
                .Where(f => checks.Contains(f.Id.Replace($"[axle={axle}]", "", StringComparison.Ordinal)) || f.Id.Contains("shaft", StringComparison.Ordinal))
                .Select(f => { Assert.Equal(Verdict.Unknown, f.Finding.Verdict); return f.Id.Replace($"[axle={axle}]", "", StringComparison.Ordinal); }).Order(StringComparer.Ordinal));
        Assert.DoesNotContain(sheet.Findings(), f => f.Id.StartsWith("tires.rolling", StringComparison.Ordinal));
    }

    private static Sheet Vehicle(string more, string top = "")
    {
        var facts = more.Length > 0 ? $"{Facts},{more}" : Facts;
        return Opened.Vehicle($$$""",{"id":"parts","parent":"vehicle","title":"Parts","options":[{"id":"as-found","parameters":{ {{{facts}}} }}]}""", top: top + Weighed).Sheet();
    }

    private static Dictionary<string, Verdict> Verdicts(Sheet sheet) => sheet.Findings().ToDictionary(f => f.Id, f => f.Finding.Verdict);
}
