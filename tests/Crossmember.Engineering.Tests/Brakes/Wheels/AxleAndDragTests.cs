using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Wheels;

public class AxleAndDragTests
{
    private const double Told = 6.894757293168; // MPa

    // Derived: 2 x 343.77 / 0.375 = 1833.7 N, 2 x 148.0 / 0.375 = 789.4 N for each MPa.
    [Theory]
    [InlineData(343.815, 1833.7)]
    [InlineData(148.013, 789.4)]
    public void Force_at_the_road_by_hand(double torque, double force) => Axle(torque * Told, torque * Told).Gives("force", force * Told, 0.05 * Told);

    [Fact]
    public void Left_and_right_may_change_places() =>
        Gen.Select(Gen.Double[500, 4000], Gen.Double[500, 4000]).Sample((a, b) =>
        {
            JsonObject one = Axle(a, b), other = Axle(b, a);
            Assert.Equal(one.Number("force")!.Value, other.Number("force")!.Value, 1e-9);
            Assert.Equal(one.Number("pull")!.Value, other.Number("pull")!.Value, 1e-9);
            Assert.Equal(one.Verdict("sides"), other.Verdict("sides"));
        }, iter: 30);

    // 5 % of the mean, common practice: 1000 and 1051 are 4.97 %, 1000 and 1053 are 5.16 %.
    [Theory]
    [InlineData(1000, 1000, "pass", "alike")]
    [InlineData(1000, 1051, "pass", "right")]
    [InlineData(1000, 1053, "caution", "right")]
    [InlineData(1053, 1000, "caution", "left")]
    public void A_pull_to_one_side_is_told(double left, double right, string verdict, string told)
    {
        var r = Axle(left, right);
        Assert.Equal(verdict, r.Verdict("sides"));
        Assert.Contains(told, r.Finding("sides")["text"]!.GetValue<string>());
    }

    // 0.1 MPa, common practice: one side begins at 0.4, the other at 0.49 and 0.51 MPa.
    [Theory]
    [InlineData("0.49", "pass", "alike")]
    [InlineData("0.51", "caution", "light touch")]
    public void A_side_that_begins_late_is_told(string late, string verdict, string told)
    {
        var r = Door.Run("brakes.axle-force", $$"""{"torques":{"left":"1000 N m","right":"1000 N m"},"thresholds":{"left":"0.4 MPa","right":"{{late}} MPa"},"loadedRadius":"375 mm"}""");
        Assert.Equal(verdict, r.Verdict("sides"));
        Assert.Contains(told, r.Finding("sides")["text"]!.GetValue<string>());
        r.Gives("threshold", (0.4 + double.Parse(late, System.Globalization.CultureInfo.InvariantCulture)) / 2, 1e-9);
    }

    // 1.1^2.448 = 1.263: the duo-servo drum at a friction of 0.35 and r / a of 1.2.
    [Theory]
    [InlineData(1, "pass", "a tenth more torque")]
    [InlineData(2.448, "pass", "26 % more torque")]
    [InlineData(3.2, "caution", "grab and pull")]
    public void Drums_that_grab_are_told(double sensitivity, string verdict, string told)
    {
        var r = Axle(1000, 1000, $$""","sensitivities":{"left":"{{sensitivity}}","right":"1"}""");
        Assert.Equal(verdict, r.Verdict("grab"));
        Assert.Contains(told, r.Finding("grab")["text"]!.GetValue<string>());
    }

    [Fact]
    public void Without_sensitivities_the_force_still_stands()
    {
        var r = Axle(1000, 1000);
        Assert.Equal("unknown", r.Verdict("grab"));
        Assert.NotNull(r.Number("force"));
    }

    // A drum's valve of 10 lb on discs: 343.8 N m for each MPa times (0.07 - 0.02) is 17.19 N m; at 27 m/s on 375 mm 1.238 kW.
    [Fact]
    public void A_drums_valve_left_on_discs_drags_and_fails()
    {
        var r = Drag("""{"kind":"disc","axle":"front","residualFront":"0.07 MPa","residualRear":"0 MPa","torque":"2370.4 N m","loadedRadius":"375 mm","cruiseSpeed":"27 m/s"}""");
        Assert.Equal("fail", r.Verdict("lets-go"));
        r.Gives("drag", 17.19, 0.005);
        r.Gives("power", 1.2377, 0.0005);
        Assert.Contains("never let go", r.Finding("lets-go")["text"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("disc", "0", "pass")]
    [InlineData("disc", "0.014", "pass")] // a disc's own valve of 2 lb
    [InlineData("drum", "0.07", "pass")]
    [InlineData("drum", "0.5", "fail")]
    [InlineData("disc", "0.069", "fail")] // a drum's valve of 10 lb
    [InlineData("disc", "0.05", "caution")] // over what was only taken by the kind
    [InlineData("drum", "0.43", "caution")]
    public void What_lets_go_passes(string kind, string held, string verdict)
    {
        var r = Drag($$"""{"kind":"{{kind}}","axle":"rear","residualRear":"{{held}} MPa"}""");
        Assert.Equal(verdict, r.Verdict("lets-go"));
        if (verdict == "pass") r.Gives("drag", 0, 0);
        else Assert.Null(r.Number("drag")); // without the wheel's torque
    }

    [Fact]
    public void A_threshold_is_the_measured_one_or_that_of_the_kind()
    {
        Drag("""{"kind":"disc","axle":"front"}""").Gives("threshold", 0.02, 1e-12);
        Drag("""{"kind":"drum","axle":"front"}""").Gives("threshold", 0.4, 1e-12);
        Drag("""{"kind":"drum","axle":"front","releasePressure":"0.3 MPa"}""").Gives("threshold", 0.3, 1e-12);
        Assert.Equal("unknown", Drag("""{"kind":"disc","axle":"front","residualRear":"0 MPa"}""").Verdict("lets-go"));
        Assert.Contains("front line is missing", Drag("""{"kind":"disc","axle":"front"}""").Finding("lets-go")["text"]!.GetValue<string>());
        Assert.Equal("pass", Drag("""{"kind":"drum","axle":"front"}""").Verdict("lets-go"));
        Door.Faults("brakes.wheel-drag", """{"kind":"disc","axle":"front","residualFront":"-0.1 MPa"}""");
    }

    // Measured, it is no guess any more: the same pressure fails.
    [Fact]
    public void Over_a_measured_release_it_fails()
    {
        Assert.Equal("fail", Drag("""{"kind":"disc","axle":"rear","residualRear":"0.05 MPa","releasePressure":"0.02 MPa"}""").Verdict("lets-go"));
        Assert.Equal("pass", Drag("""{"kind":"disc","axle":"rear","residualRear":"0.07 MPa","releasePressure":"0.1 MPa"}""").Verdict("lets-go"));
        var taken = Drag("""{"kind":"disc","axle":"rear","residualRear":"0.05 MPa"}""").Finding("lets-go");
        Assert.Contains("common practice", taken["source"]!.GetValue<string>());
        Assert.Contains("measure where it lets go", taken["text"]!.GetValue<string>());
    }

    // A residual valve holds up to 0.12 MPa (common practice, no source): tired springs are not known to beat one that nobody looked for.
    [Theory]
    [InlineData("0.03 MPa", "unknown")]
    [InlineData("0.12 MPa", "unknown")]
    [InlineData("0.13 MPa", "pass")]
    public void Tired_springs_need_the_valve_looked_at(string release, string verdict)
    {
        var r = Drag($$"""{"kind":"drum","axle":"rear","releasePressure":"{{release}}"}""");
        Assert.Equal(verdict, r.Verdict("lets-go"));
        if (verdict == "unknown") Assert.Contains("rear line is missing", r.Finding("lets-go")["text"]!.GetValue<string>());
    }

    private static JsonObject Drag(string input) => Door.Run("brakes.wheel-drag", input);

    private static JsonObject Axle(double left, double right, string more = "") => Door.Run("brakes.axle-force", $$"""
        {"torques":{"left":"{{left:R}} N m","right":"{{right:R}} N m"},"thresholds":{"left":"0.4 MPa","right":"0.4 MPa"},"loadedRadius":"375 mm"{{more}}}
        """);
}
