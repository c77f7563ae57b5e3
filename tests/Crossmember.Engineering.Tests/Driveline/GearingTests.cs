using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class GearingTests
{
    // Derived: 15 in rolling radius, overall 10:1, 15 mph -> 1680.7 rpm (the rounded inch factor 168 gives 1680). Tolerance: half of the last decimal.
    [Fact]
    public void Engine_speed_of_a_rolling_wheel() =>
        Door.Run("driveline.engine-speed", """{"roadSpeed":"15 mph","tireDiameter":"30 in","axleRatio":10,"gearRatio":1}""").Gives("engineSpeed", 1680.7, 0.05);

    // Derived, no slip: 336.135 x 4.11 x 65 / 33 = 2721 rpm.
    [Fact]
    public void Engine_speed_of_a_common_build() =>
        Door.Run("driveline.engine-speed", """{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":"4.11","gearRatio":"1"}""").Gives("engineSpeed", 2721, 0.5);

    // The result shown in the format's own description: 65 mph, 33 in, 4.1 -> 2714.5 rpm.
    [Fact]
    public void The_formats_own_example_comes_out_with_its_margin()
    {
        var r = Door.Run("driveline.engine-speed", """{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":4.1,"gearRatio":1,"redline":"4000 rpm"}""");
        r.Gives("engineSpeed", 2714.5, 0.05);
        Assert.Equal("pass", r.Verdict("redline"));
        Assert.Equal(0.3214, r.Finding("redline")["margin"]!.GetValue<double>(), 0.00005);
    }

    // With a rolling circumference of 3.05 D (ETRTO convention, from memory) the same build turns 2803 rpm: the validity text promises "up to about 3 %".
    [Fact]
    public void A_loaded_radial_turns_the_engine_about_three_per_cent_faster() =>
        Assert.Equal(0.03, (2803 / EngineSpeed(65, 33, 4.11, 1)) - 1, 0.0005);

    // Independent: the inch rule of the trade, n = 336.135 G mph / D, to its six figures.
    [Fact]
    public void Engine_speed_agrees_with_the_inch_rule() =>
        Gen.Select(Gen.Double[5, 100], Gen.Double[24, 44], Gen.Double[2.5, 6], Gen.Double[0.6, 7]).Sample((mph, D, axle, gear) =>
        {
            var n = EngineSpeed(mph, D, axle, gear);
            return Math.Abs((n / (336.135 * axle * gear * mph / D)) - 1) < 2e-6;
        }, iter: 100);

    [Fact]
    public void Road_speed_is_the_way_back_from_engine_speed() =>
        Gen.Select(Gen.Double[1, 100], Gen.Double[24, 44], Gen.Double[2.5, 6], Gen.Double[0.6, 7]).Sample((mph, D, axle, gear) =>
        {
            var rest = $$""" "tireDiameter":"{{D:R}} in","axleRatio":{{axle:R}},"gearRatio":{{gear:R}},"transferRatio":"2.72" """;
            var n = Door.Run("driveline.engine-speed", $$"""{"roadSpeed":"{{mph:R}} mph",{{rest}}}""").Number("engineSpeed")!.Value;
            Door.Run("driveline.road-speed", $$"""{"engineSpeed":"{{n:R}} rpm",{{rest}}}""").Gives("roadSpeed", mph, 1e-9 * mph);
        }, iter: 100);

    // US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-14: 2.798 x 2.43 x 5.38, printed as 36.7 (exact 36.58: the source rounds on the way).
    [Fact]
    public void Overall_ratio_of_the_army_manual() =>
        Door.Run("driveline.overall-ratio", """{"gearRatio":"2.798","transferRatio":"2.43","axleRatio":"5.38"}""").Gives("ratio", 36.58, 0.005);

    // Derived: 5.15 x 2.28 x 4.11 = 48.26.
    [Fact]
    public void Crawl_ratio_takes_the_lowest_gear_and_range_in_any_order()
    {
        var r = Door.Run("driveline.crawl-ratio", """{"gearRatios":{"4":"1","2":"2.72","1":"5.15","3":"1.64"},"transferRatios":{"low":"2.28","high":"1"},"axleRatio":"4.11"}""");
        r.Gives("crawlRatio", 48.26, 0.005);
        Assert.Null(r.Number("crawlSpeed"));
        Assert.Equal(["idleSpeed", "tireDiameter"], r["missing"]!.AsArray().Select(m => m!["input"]!.GetValue<string>()));
    }

    [Fact]
    public void Crawl_speed_is_road_speed_in_that_gearing()
    {
        var crawl = Door.Run("driveline.crawl-ratio",
            """{"gearRatios":{"1":"5.15","2":"1"},"transferRatios":{"high":"1","low":"2.28"},"axleRatio":"4.11","idleSpeed":"700 rpm","tireDiameter":"33 in"}""");
        var road = Door.Run("driveline.road-speed", """{"engineSpeed":"700 rpm","tireDiameter":"33 in","axleRatio":"4.11","gearRatio":"5.15","transferRatio":"2.28"}""");
        crawl.Gives("crawlSpeed", road.Number("roadSpeed")!.Value, 1e-12);
    }

    [Theory]
    [InlineData("2800 rpm", "pass")]
    [InlineData("2700 rpm", "fail")]
    public void Cruise_uses_the_longest_gearing_and_raises_the_redline(string redline, string verdict)
    {
        var r = Door.Run("driveline.cruise", $$"""
            {"cruiseSpeed":"65 mph","tireDiameter":"33 in","axleRatio":"4.11","gearRatios":{"1":"4","3":"1","2":"2"},"transferRatios":{"low":"2.5","high":"1"},"redline":"{{redline}}"}
            """);
        r.Gives("engineSpeed", 2721, 0.5);
        Assert.Equal(verdict, r.Verdict("redline"));
    }

    [Fact]
    public void Cruise_equals_engine_speed_in_every_gear_at_its_slowest() =>
        Gen.Select(Gen.Double[0.6, 7].Array[1, 6], Gen.Double[1, 5].Array[1, 3], Gen.Double[20, 90]).Sample((gears, ranges, mph) =>
        {
            static string Map(double[] x) => string.Join(",", x.Select((r, i) => $"\"{i}\":{r:R}"));
            var cruise = Door.Run("driveline.cruise", $$"""
                {"cruiseSpeed":"{{mph:R}} mph","tireDiameter":"33 in","axleRatio":4.11,"gearRatios":{ {{Map(gears)}} },"transferRatios":{ {{Map(ranges)}} } }
                """).Number("engineSpeed")!.Value;
            var slowest = gears.SelectMany(g => ranges, (g, t) => EngineSpeed(mph, 33, 4.11, g, t)).Min();
            return Math.Abs(cruise - slowest) <= 1e-12 * slowest;
        }, iter: 30);

    private static double EngineSpeed(double mph, double D, double axle, double gear, double transfer = 1) => Door.Run("driveline.engine-speed", $$"""
        {"roadSpeed":"{{mph:R}} mph","tireDiameter":"{{D:R}} in","axleRatio":{{axle:R}},"gearRatio":{{gear:R}},"transferRatio":{{transfer:R}}}
        """).Number("engineSpeed")!.Value;
}
