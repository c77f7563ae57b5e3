using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Pedal;

public class TravelTests
{
    private const double Thousand = 6.894757293168; // MPa

    private const string Rest = """
        "frontHoseLength":"0.45 m","rearHoseLength":"0.40 m","frontHoses":2,"rearHoses":1,"fluidVolume":"250 cm3","stiffness":"1.8 GPa","takeUp":"3 mm","floorTravel":"150 mm","hardPressure":"6.894757293168 MPa"
        """;

    private const string Line = """ "cutIn":"22.56 N","jumpIn":"0.67 MPa","knee":"172.9 N","kneePressure":"6.413 MPa","plainPressure":"3.3977 MPa","deadLoss":"0.383 MPa" """;

    // Derived: front 2 x 3619.1 x 0.45 + 2 x 0.45 m x 0.66 cm3/ft + 150 cm3 x p / K = 5780.6 mm3, rear 4 x 506.7 x 0.90 + 866.1 + 383.1 = 3073.3 mm3; 20.47 mm; 85.99 mm; 57.3 % of 150 mm.
    [Fact]
    public void Travel_worked_by_hand()
    {
        var r = Travel();
        r.Gives("frontVolume", 5.7806, 0.0005);
        r.Gives("rearVolume", 3.0733, 0.0005);
        r.Gives("stroke", 20.47, 0.005);
        r.Gives("travel", 85.99, 0.02);
        r.Gives("usedShare", 0.573, 0.0005);
        Assert.Equal("pass", r.Verdict("floor"));
    }

    // Derived: 0.40 mm of knock-back in front: 2 x 3619.1 x 0.40 = 2895 mm3, 5.71 mm of rod, 24.0 mm of pedal.
    [Fact]
    public void Knock_back_is_told_in_pedal()
    {
        Assert.Equal(5.71, Travel(knockBack: 0.4).Number("stroke")!.Value - Travel().Number("stroke")!.Value, 0.005);
        Assert.Equal(24.0, Travel(knockBack: 0.4).Number("travel")!.Value - Travel().Number("travel")!.Value, 0.05);
        Assert.Equal(2.895, 2 * Disc(0.4).Number("knockBackVolume")!.Value, 0.0005);
    }

    // Derived: on 28.575 mm the pedal goes 70.6 mm and takes 26.6 % more force; the drawn trade-off says the same.
    [Fact]
    public void A_wider_bore_trades_travel_for_force()
    {
        Travel(bore: 28.575).Gives("travel", 70.6, 0.05);
        var curves = Travel(more: "," + Line.Replace("\"cutIn\":\"22.56 N\",\"jumpIn\":\"0.67 MPa\",\"knee\":\"172.9 N\",\"kneePressure\":\"6.413 MPa\"",
            "\"cutIn\":\"0 N\",\"jumpIn\":\"0 MPa\",\"knee\":\"0 N\",\"kneePressure\":\"0 MPa\"", StringComparison.Ordinal))["curves"]!.AsArray();
        double[] Y(string name) => [.. curves.Single(c => c!["name"]!.GetValue<string>() == name)!["y"]!["values"]!.AsArray().Select(v => v!.GetValue<double>())];
        var (travel, force) = (Y("pedal travel by bore"), Y("pedal force by bore"));
        Assert.Equal(70.6, travel[8], 0.05);
        Assert.Equal(1.266, force[8] / force[6], 0.0005);
        Assert.True(travel.Zip(travel.Skip(1)).All(p => p.First > p.Second));
        Assert.True(force.Zip(force.Skip(1)).All(p => p.First < p.Second));
    }

    // Second way: pressure raised by small steps, each gap closed and each part squeezed by itself, the rod pushed along. No closed volume is used.
    [Fact]
    public void Small_steps_of_pressure_add_up_to_the_same_travel()
    {
        const int steps = 2000;
        double front = 0, rear = 0, dp = Thousand / steps; // mm3, MPa
        front += 2 * 3619.115 * 2 * 0.1;
        rear += 2 * 2 * 506.7075 * 0.5;
        for (var i = 0; i < steps; i++)
        {
            front += (2 * 3619.115 * 0.25 * dp / Thousand) + (2 * 450 * (0.66 * 1000 / 304.8) * dp / Thousand) + (150e3 * dp / 1800);
            rear += (2 * 2 * 506.7075 * 0.4 * dp / Thousand) + (400 * (0.66 * 1000 / 304.8) * dp / Thousand) + (100e3 * dp / 1800);
        }
        Travel().Gives("travel", 4.2 * (((front + rear) / 506.7075) + 3), 0.01);
    }

    // On a bar work is kept at constant pressure: F s = Ff sf + Fr sr, so 2000 N on the bar moved s does the work that both fluids take.
    [Fact]
    public void On_a_bar_work_is_kept()
    {
        const string twin = """ "masterKind":"twin","frontArm":"30 mm","rearArm":"34 mm","frontBore":"19.05 mm","rearBore":"22.225 mm" """;
        // Only clearances: with the rods' forces constant while they close, work on the pedal's rod is work on both pistons.
        var r = Door.Run("brakes.pedal-travel", $$"""
            {"pedalRatio":5,{{twin}},"frontTakeUp":{"left":"1 cm3","right":"1 cm3"},"frontFull":{"left":"1 cm3","right":"1 cm3"},"rearTakeUp":{"left":"0.5 cm3","right":"0.5 cm3"},
             "rearFull":{"left":"0.5 cm3","right":"0.5 cm3"},"frontHoses":0,"rearHoses":0,"fluidVolume":"0 cm3","takeUp":"0 mm","frontStroke":"30 mm","rearStroke":"30 mm","floorTravel":"150 mm"}
            """);
        double sf = 2000 / (Math.PI / 4 * 19.05 * 19.05), sr = 1000 / (Math.PI / 4 * 22.225 * 22.225);
        r.Gives("stroke", (34.0 / 64 * sf) + (30.0 / 64 * sr), 1e-6);
        Assert.Equal("pass", r.Verdict("stroke"));
        // Front lost: its rod goes its 30 mm, the rear its own way.
        Assert.Contains($"{5 * ((34.0 / 64 * 30) + (30.0 / 64 * sr)):0} mm of 150 mm", Text(r, "failed-front"));
    }

    // A stepped bore fills with its large end and presses with its small one: 31.75 mm for the clearances.
    [Fact]
    public void A_stepped_bore_fills_with_its_large_end()
    {
        var stepped = Travel(more: ""","masterKind":"stepped","largeBore":"31.75 mm" """);
        const double takeUp = (2 * 723.823) + (2 * 506.7075), all = 5780.6 + 3073.3; // mm3
        stepped.Gives("stroke", (takeUp / (Math.PI / 4 * 31.75 * 31.75)) + ((all - takeUp) / 506.7075) + 3, 0.005);
    }

    // 570.55: (A - B) / A no more than 80 % at 50 lb. Rod 3 + (2462 + 933 p) / 506.7 mm: at 222.4 N 6.791 MPa of the line, 20.28 mm, 85.2 mm.
    [Theory]
    [InlineData("106.6 mm", "pass")]
    [InlineData("106.3 mm", "caution")]
    public void A_fifth_of_the_way_stays_at_fifty_pounds(string floor, string verdict)
    {
        var r = Travel(more: "," + Line, floor: floor);
        Assert.Equal(verdict, r.Verdict("reserve"));
        Assert.Equal("49 CFR 570.55, for vehicles over 10,000 lb", r.Finding("reserve")["source"]!.GetValue<string>());
    }

    // Front lost: 14 mm of chamber + 1.5 + 3073.3 / 506.7 mm: 90.6 mm of pedal. Rear lost: 14 + 1.5 + 5780.6 / 506.7: 113.0 mm. At the floor the rest goes by each circuit's own stiffness.
    [Theory]
    [InlineData("150 mm", "14 mm", "pass", "pass")]
    [InlineData("100 mm", "14 mm", "pass", "caution")]
    [InlineData("78 mm", "14 mm", "caution", "caution")]
    [InlineData("68 mm", "14 mm", "fail", "fail")]
    public void With_a_circuit_lost_the_other_must_build_pressure_before_the_floor(string floor, string chamber, string front, string rear)
    {
        var r = Travel(floor: floor, more: $$""","frontStroke":"{{chamber}}","rearStroke":"{{chamber}}" """);
        Assert.Equal(front, r.Verdict("failed-front"));
        Assert.Equal(rear, r.Verdict("failed-rear"));
        if (front == "fail") Assert.Contains("on the floor before the rear circuit builds pressure", Text(r, "failed-front"));
    }

    // Front lost: 14 + 1.5 + 2 mm before there is pressure, then 0.5896 mm for each MPa: 4.2 x 17.62 mm are 74 mm at 0.202 MPa, where shoes of 0.4 MPa do not move yet.
    [Theory]
    [InlineData("0.4 MPa", "fail")]
    [InlineData("0.15 MPa", "caution")]
    public void Pressure_at_the_floor_that_moves_no_shoe_is_none(string begins, string verdict)
    {
        var r = Travel(floor: "74 mm", more: $$""","frontStroke":"14 mm","rearStroke":"14 mm","rearThresholds":{"left":"{{begins}}","right":"{{begins}}"},"frontThresholds":{"left":"0.02 MPa","right":"0.02 MPa"}""");
        r.Gives("floorPressureFrontLost", 0.202, 0.0005);
        Assert.Equal(verdict, r.Verdict("failed-front"));
        if (verdict == "fail") Assert.Contains("nothing brakes", Text(r, "failed-front"));
    }

    // Front 5780.6 / 506.7 + 1.5 = 12.91 mm, rear 3073.3 / 506.7 + 1.5 = 7.57 mm, by hand: each chamber must have its own.
    [Theory]
    [InlineData("36 mm", "6 mm", "18 mm", "fail", "front circuit's chamber strokes 12.9 mm of 6.0 mm")]
    [InlineData("36 mm", "18 mm", "7 mm", "fail", "rear circuit's chamber strokes 7.6 mm of 7.0 mm")]
    [InlineData("36 mm", "13 mm", "7.6 mm", "pass", "master cylinder strokes 20.5 mm of 36.0 mm")]
    [InlineData("20 mm", "13 mm", "7.6 mm", "fail", "master cylinder strokes 20.5 mm of 20.0 mm")]
    public void Each_chamber_must_have_the_way_of_its_own_circuit(string all, string front, string rear, string verdict, string told)
    {
        var r = Travel(more: $$""","masterStroke":"{{all}}","frontStroke":"{{front}}","rearStroke":"{{rear}}" """);
        Assert.Equal(verdict, r.Verdict("stroke"));
        Assert.Contains(told, Text(r, "stroke"));
    }

    // Rear lost: its chamber bottoms at 10 mm, and the front wants 12.91 mm more: 22.9 mm of rod on 22 mm of cylinder. The front chamber of 12 mm is at its end with 6.16 MPa.
    [Fact]
    public void With_a_circuit_lost_the_strokes_must_do_as_well()
    {
        var both = Travel(more: ""","masterStroke":"22 mm","frontStroke":"12 mm","rearStroke":"10 mm" """);
        Assert.Equal("fail", both.Verdict("failed-rear"));
        both.Gives("floorPressureRearLost", 6.16, 0.005);
        var whole = Travel(more: ""","masterStroke":"22 mm","frontStroke":"14 mm","rearStroke":"10 mm" """);
        Assert.Contains("22.9 mm of 22.0 mm", Text(whole, "failed-rear"));
        var chamber = Travel(more: ""","masterStroke":"36 mm","frontStroke":"12 mm","rearStroke":"10 mm" """);
        Assert.Contains("front circuit's chamber is at its end with 6.2 MPa", Text(chamber, "failed-rear"));
        Assert.Equal("pass", chamber.Verdict("failed-front"));
        // A chamber that nobody measured is no pass.
        Assert.Equal("unknown", Travel(more: ""","frontStroke":"12 mm" """).Verdict("failed-front"));
    }

    // At the pressure told for the floor the volumes fill the way that is left: there and back.
    [Fact]
    public void The_pressure_at_the_floor_uses_the_way_up()
    {
        var r = Travel(floor: "80 mm", more: ""","frontStroke":"14 mm","rearStroke":"14 mm" """);
        var p = r.Number("floorPressureFrontLost")!.Value;
        var rod = 14 + 1.5 + (((2 * 506.7075) + ((3073.3 - (2 * 506.7075)) * p / Thousand)) / 506.7075);
        Assert.Equal(80, 4.2 * rod, 0.02);
    }

    [Fact]
    public void One_circuit_leaves_nothing()
    {
        var r = Travel(more: ""","circuits":"one" """);
        Assert.Equal("caution", r.Verdict("failed-front"));
        Assert.Contains("nothing but the parking brake", Text(r, "failed-rear"));
        Assert.Equal(0, r.Number("floorPressureFrontLost"));
        Assert.Equal("caution", Travel(more: ""","masterKind":"single","circuits":"front-rear" """).Verdict("failed-rear"));
    }

    [Fact]
    public void Diagonal_circuits_fail_alike()
    {
        var r = Travel(floor: "78 mm", more: ""","circuits":"diagonal","frontStroke":"14 mm","rearStroke":"14 mm" """);
        Assert.Equal(r.Number("floorPressureFrontLost")!.Value, r.Number("floorPressureRearLost")!.Value, 1e-9);
        Travel(more: ""","circuits":"diagonal" """).Gives("travel", 85.99, 0.02);
    }

    [Theory]
    [InlineData("22 mm", "pass")]
    [InlineData("20 mm", "fail")]
    public void The_stroke_of_the_cylinder_must_be_long_enough(string stroke, string verdict) =>
        Assert.Equal(verdict, Travel(more: $$""","masterStroke":"{{stroke}}" """).Verdict("stroke"));

    [Theory]
    [InlineData("0 mm", "caution")]
    [InlineData("6 mm", "pass")]
    public void Without_free_play_the_brakes_may_drag(string play, string verdict) => Assert.Equal(verdict, Travel(more: $$""","freePlay":"{{play}}" """).Verdict("free-play"));

    [Fact]
    public void On_the_floor_before_a_hard_stop_is_a_fail() => Assert.Contains("on the floor before", Text(Travel(floor: "80 mm"), "floor"));

    [Fact]
    public void What_is_missing_is_named()
    {
        var r = Door.Run("brakes.pedal-travel", $$"""{"pedalRatio":4.2,{{Volumes(0)}} }""");
        Assert.Contains("read it off the casting", Text(r, "floor"));
        Assert.Contains("push rod touches", Text(r, "free-play"));
        Assert.NotNull(r.Number("frontVolume"));
        Assert.Contains("stroke of the front circuit's chamber is missing", Text(Travel(), "failed-front"));
        Assert.Equal("unknown", Travel().Verdict("reserve"));
    }

    // A sliding caliper with one piston and a fixed one with a like piston each side take the same fluid; wheel cylinders: two pistons each, of a two-leading brake one each of two.
    [Fact]
    public void Pistons_are_counted_by_the_fluid_they_take()
    {
        var one = Drum(""" "cylinders":1 """);
        Drum(""" "cylinders":2,"drumKind":"two-leading" """).Gives("takeUp", one.Number("takeUp")!.Value, 1e-12);
        Drum(""" "cylinders":2 """).Gives("takeUp", 2 * one.Number("takeUp")!.Value, 1e-12);
        one.Gives("takeUp", 2 * 506.7075 * 0.5 / 1000, 1e-6);
        Assert.Null(Door.Run("brakes.wheel-volume", """{"kind":"disc","pistons":1}""").Number("takeUp"));
        Assert.Null(Door.Run("brakes.wheel-volume", """{"kind":"drum"}""").Number("full"));
    }

    // Twice every pedal ratio is twice the travel; a unit is a unit: lengths scaled by k and volumes by k^3 scale the travel by k (hoses and fluid left out).
    [Fact]
    public void Scaled_brakes_scale_their_travel() =>
        Gen.Select(Gen.Double[0.5, 2], Gen.Double[2, 8]).Sample((k, ratio) =>
        {
            double At(double scale, double i)
            {
                var v = scale * scale * scale;
                return Door.Run("brakes.pedal-travel", $$"""
                    {"pedalRatio":{{i:R}},"masterBore":"{{25 * scale:R}} mm","frontTakeUp":{"l":"{{v:R}} cm3"},"frontFull":{"l":"{{2 * v:R}} cm3"},"rearTakeUp":{"l":"{{v:R}} cm3"},"rearFull":{"l":"{{3 * v:R}} cm3"},
                     "frontHoses":0,"rearHoses":0,"fluidVolume":"0 cm3","takeUp":"{{2 * scale:R}} mm"}
                    """).Number("travel")!.Value;
            }
            Assert.Equal(k * At(1, ratio), At(k, ratio), 1e-9 * At(k, ratio));
            Assert.Equal(2 * At(1, ratio), At(1, 2 * ratio), 1e-9 * At(1, 2 * ratio));
        }, iter: 50);

    private static JsonObject Disc(double knockBack) => Door.Run("brakes.wheel-volume", $$"""
        {"kind":"disc","pistonDiameter":"48 mm","pistons":2,"padClearance":"0.1 mm","give":"0.25 mm","knockBack":"{{knockBack}} mm"}
        """);

    private static JsonObject Drum(string more) => Door.Run("brakes.wheel-volume", $$"""{"kind":"drum","cylinderBore":"25.4 mm","shoeClearance":"0.5 mm","give":"0.4 mm",{{more}} }""");

    private static string Volumes(double knockBack)
    {
        JsonObject disc = Disc(knockBack), drum = Drum(""" "cylinders":1 """);
        string Both(JsonObject wheel, string output) => $$"""{"left":"{{wheel.Number(output):R}} cm3","right":"{{wheel.Number(output):R}} cm3"}""";
        return $""" "frontTakeUp":{Both(disc, "takeUp")},"frontFull":{Both(disc, "full")},"rearTakeUp":{Both(drum, "takeUp")},"rearFull":{Both(drum, "full")} """;
    }

    private static JsonObject Travel(double bore = 25.4, double knockBack = 0, string more = "", string floor = "150 mm") =>
        Door.Run("brakes.pedal-travel", $$"""{"pedalRatio":4.2,"masterBore":"{{bore}} mm",{{Volumes(knockBack)}},{{Rest.Replace("150 mm", floor, StringComparison.Ordinal)}}{{more}} }""");

    private static string Text(JsonObject r, string check) => r.Finding(check)["text"]!.GetValue<string>();
}
