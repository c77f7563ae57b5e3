using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class CruisePullTests
{
    private const double PoundForce = 0.45359237 * 9.80665, Mph = 1609.344 / 3600; // N, m/s

    // Derived: 25 m/s on 0.4 m with 4.0 is 250 rad/s; 200 x 4 x 0.85 / 0.4 = 1700 N; 294.2 + 0.9 x 625 = 856.7 N; left 843.3 N; sin th + 0.015 cos th = 1137.5 / 19613.3 -> 4.305 %.
    [Fact]
    public void What_is_left_in_top_gear_worked_by_hand()
    {
        var r = At(25 / Mph, 4, 0.4);
        r.Gives("engineSpeed", 250 * 30 / Math.PI, 1e-6);
        r.Gives("pull", 1700 / PoundForce, 0.05);
        r.Gives("surplus", 843.3 / PoundForce, 0.05 / PoundForce);
        r.Gives("grade", 4.305, 0.0005);
        Assert.Equal("pass", r.Verdict("top-gear"));
    }

    // Larger tires: with torque flat, 31 to 33 in takes 1 - 31/33 = 6.06 % of the pull in top gear; the axle ratio that restores engine speed gives it back.
    [Fact]
    public void Larger_tires_take_pull_from_top_gear_and_a_lower_axle_gives_it_back()
    {
        const double small = 31 * 0.0254 * 3.05 / (2 * Math.PI), large = 33 * 0.0254 * 3.05 / (2 * Math.PI);
        JsonObject before = At(60, 3.73, small), after = At(60, 3.73, large), restored = At(60, 3.73 * 33 / 31, large);
        Assert.Equal(31.0 / 33, after.Number("pull")!.Value / before.Number("pull")!.Value, 1e-9);
        Assert.True(after.Number("grade") < before.Number("grade"));
        restored.Gives("pull", before.Number("pull")!.Value, 1e-9 * before.Number("pull")!.Value);
        restored.Gives("engineSpeed", before.Number("engineSpeed")!.Value, 1e-6);
        restored.Gives("grade", before.Number("grade")!.Value, 1e-9);
    }

    // A gear that falls short climbs a negative grade and is a caution, not a fail: a lower gear may do it. At the grade told, forces balance again.
    [Fact]
    public void On_the_grade_told_pull_is_road_load_again() =>
        Gen.Select(Gen.Double[20, 80], Gen.Double[2.5, 6], Gen.Double[800, 6000], Gen.Double[0.5, 4]).Sample((mph, axle, kg, area) =>
        {
            var r = At(mph, axle, 0.4, kg, area);
            if (r.Number("grade") is not { } percent) return;
            var uphill = Door.Run("driveline.road-load", $$"""{"speed":"{{mph:R}} mph","mass":"{{kg:R}} kg","dragArea":"{{area:R}} m2","grade":{{Math.Abs(percent) / 100:R}} }""");
            var load = percent >= 0 ? uphill.Number("total")!.Value : uphill.Number("total")!.Value - (2 * uphill.Number("gradeForce")!.Value);
            Assert.Equal(r.Number("pull")!.Value, load, 1e-9 * kg);
            Assert.Equal(percent >= 0 ? "pass" : "caution", r.Verdict("top-gear"));
            Assert.Equal(r.Number("pull")!.Value - r.Number("roadLoad")!.Value, r.Number("surplus")!.Value, 1e-9 * kg);
        }, iter: 100);

    // 80 mph turns the engine over the 6000 rpm where its torque ends: the answer says so and asks for the torque there.
    [Fact]
    public void Beyond_the_curve_it_is_unknown()
    {
        var r = At(80, 10, 0.4);
        Assert.Null(r.Number("pull"));
        Assert.Null(r.Number("grade"));
        Assert.NotNull(r.Number("roadLoad"));
        Assert.Equal("unknown", r.Verdict("top-gear"));
        Assert.Contains("600 to 6000 rpm", r.Finding("top-gear")["text"]!.GetValue<string>());
    }

    [Fact]
    public void A_missing_curve_names_itself_and_how_to_get_it()
    {
        var r = Door.Run("driveline.cruise-pull", """
            {"cruiseSpeed":"60 mph","gearRatios":{"4":1},"transferRatios":{"high":1},"axleRatio":4,"rollingRadius":"16 in","mass":"2000 kg","dragArea":"1.5 m2"}
            """);
        Assert.Contains("full-load torque curve of the engine is missing (take the maker's curve", r.Finding("top-gear")["text"]!.GetValue<string>());
        Assert.Null(r.Number("roadLoad"));
    }

    private static JsonObject At(double mph, double axle, double re, double kg = 2000, double area = 1.5) => Door.Run("driveline.cruise-pull", $$"""
        {"cruiseSpeed":"{{mph:R}} mph","torqueCurve":[["600 rpm","200 N m"],["6000 rpm","200 N m"]],"gearRatios":{"3":"1.5","4":"1"},"transferRatios":{"low":"2","high":"1"},
         "axleRatio":{{axle:R}},"rollingRadius":"{{re:R}} m","mass":"{{kg:R}} kg","dragArea":"{{area:R}} m2"}
        """);
}
