using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class RoadLoadTests
{
    private const double PoundForce = 0.45359237 * 9.80665, Horsepower = 550 * 0.3048 * PoundForce; // N, W: exact definitions

    // Derived: 2150 x 9.80665 x 0.015 = 316.3 N; 0.5 x 1.2 x 0.5 x 2.9 x (100 / 3.6)^2 = 671.3 N; 987.6 N x 27.778 m/s = 27.43 kW. Half of the last decimal.
    [Fact]
    public void Road_load_at_a_hundred_kilometers_an_hour()
    {
        var r = Road("""{"speed":"100 km/h","mass":"2150 kg","dragArea":"1.45 m2"}""");
        r.Gives("rolling", 316.3 / PoundForce, 0.05 / PoundForce);
        r.Gives("air", 671.3 / PoundForce, 0.05 / PoundForce);
        r.Gives("power", 27430 / Horsepower, 5 / Horsepower);
        r.Gives("gradeForce", 0, 0);
    }

    // Derived: 10,000 lb on 5 % is 500 lb by the rule of one per cent for one per cent, 499.4 lb by the exact sine.
    [Fact]
    public void Grade_resistance_is_the_sine_and_not_the_per_cent()
    {
        var r = Road("""{"speed":"1 mph","mass":"10000 lb","grade":0.05}""");
        r.Gives("gradeForce", 499.4, 0.05);
        Assert.Equal(500, r.Number("gradeForce")!.Value, 0.002 * 500);
    }

    // Derived: 4500 kg on 5 %: 4500 x 9.80665 x 0.05 = 2206.5 N by the rule, 2203.7 N by the sine.
    [Fact]
    public void Grade_resistance_in_newtons()
    {
        var N = Road("""{"speed":"1 mph","mass":"4500 kg","grade":0.05}""").Number("gradeForce")!.Value * PoundForce;
        Assert.Equal(2203.7, N, 0.05);
        Assert.Equal(2207, N, 0.002 * 2207);
    }

    [Fact]
    public void Without_the_drag_area_rolling_and_grade_still_stand()
    {
        var r = Road("""{"speed":"60 mph","mass":"2150 kg"}""");
        Assert.NotNull(r.Number("rolling"));
        Assert.Null(r.Number("air"));
        Assert.Null(r.Number("total"));
        Assert.Null(r.Number("power"));
        Assert.Contains(r["missing"]!.AsArray(), m => m!["input"]!.GetValue<string>() == "dragArea" && m["measure"]!.GetValue<string>().Contains("coast down"));
    }

    // Energy: lifting the vehicle through the height of a mile of road takes m g h, whatever the angle; the force along the slope times the way along it must give it.
    [Fact]
    public void Work_against_the_grade_is_the_height_gained() =>
        Gen.Select(Gen.Double[300, 9000], Gen.Double[0, 1.2]).Sample((kg, grade) =>
        {
            var force = Road($$"""{"speed":"5 mph","mass":"{{kg:R}} kg","grade":{{grade:R}} }""").Number("gradeForce")!.Value * PoundForce;
            var slope = Math.Sqrt(1 + (grade * grade)); // way along the slope for one metre of run
            Assert.Equal(kg * 9.80665 * grade, force * slope, 1e-9 * kg * 9.80665);
        }, iter: 100);

    // Rolling and grade force are the two components of the weight: (Rr / f)^2 + Rg^2 = (m g)^2.
    [Fact]
    public void Rolling_and_grade_force_are_components_of_one_weight() =>
        Gen.Select(Gen.Double[300, 9000], Gen.Double[0, 1.2], Gen.Double[0.005, 0.4]).Sample((kg, grade, f) =>
        {
            var r = Road($$"""{"speed":"5 mph","mass":"{{kg:R}} kg","grade":{{grade:R}},"rollingResistance":{{f:R}} }""");
            double across = r.Number("rolling")!.Value / f, along = r.Number("gradeForce")!.Value, pounds = kg / 0.45359237;
            Assert.Equal(pounds, Math.Sqrt((across * across) + (along * along)), 1e-9 * pounds);
        }, iter: 100);

    [Fact]
    public void Twice_the_speed_takes_four_times_the_air_force_and_the_same_rolling() =>
        Gen.Select(Gen.Double[5, 70], Gen.Double[0.4, 4]).Sample((mph, area) =>
        {
            var (slow, fast) = (At(mph, area), At(2 * mph, area));
            Assert.Equal(4 * slow.Number("air")!.Value, fast.Number("air")!.Value, 1e-9 * fast.Number("air")!.Value);
            Assert.Equal(slow.Number("rolling"), fast.Number("rolling"));
            // Power is force times speed: 550 ft lbf/s to the horsepower, 5280 / 3600 ft/s to the mph.
            Assert.Equal(slow.Number("total")!.Value * mph * 5280 / 3600 / 550, slow.Number("power")!.Value, 1e-9 * slow.Number("power")!.Value);
        }, iter: 100);

    private static System.Text.Json.Nodes.JsonObject At(double mph, double area) => Road($$"""{"speed":"{{mph:R}} mph","mass":"2000 kg","dragArea":"{{area:R}} m2"}""");

    private static System.Text.Json.Nodes.JsonObject Road(string input) => Door.Run("driveline.road-load", input);
}
