using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Brakes.Balance;

public class ValveKneeTests
{
    private const string Loaded = "\"kind\":\"load-sensing\",\"knee\":\"2 MPa\",\"heavyKnee\":\"6 MPa\",\"lightLoad\":\"800 kg\",\"heavyLoad\":\"1400 kg\"";

    // Straight between two readings by hand; taken as at the nearer reading beyond them, and said.
    [Theory]
    [InlineData(800, 2, "pass")]
    [InlineData(1100, 4, "pass")]
    [InlineData(1400, 6, "pass")]
    [InlineData(1500, 6, "caution")]
    [InlineData(700, 2, "caution")]
    public void A_load_sensing_valve_follows_the_axle(int load, double knee, string verdict)
    {
        var r = Door.Run("brakes.valve-knee", $$"""{{{Loaded}},"rearLoad":"{{load}} kg"}""");
        r.Gives("knee", knee, 1e-9);
        Assert.Equal(verdict, r.Verdict("knee"));
    }

    [Fact]
    public void A_fixed_one_stays_and_none_has_none()
    {
        var r = Door.Run("brakes.valve-knee", """{"kind":"fixed","knee":"3.5 MPa","rearLoad":"900 kg"}""");
        r.Gives("knee", 3.5, 1e-9);
        var none = Door.Run("brakes.valve-knee", """{"kind":"none","knee":"3.5 MPa"}""");
        Assert.Null(none.Number("knee"));
        Assert.Equal("pass", none.Verdict("knee"));
    }

    [Theory]
    [InlineData("""{"kind":"fixed"}""", "gauge at a front and a rear bleeder")]
    [InlineData("""{"kind":"load-sensing","knee":"2 MPa"}""", "gauge both sides again")]
    [InlineData("""{"kind":"load-sensing","knee":"2 MPa","heavyKnee":"6 MPa","rearLoad":"900 kg"}""", "weigh the rear axle")]
    [InlineData("""{"kind":"load-sensing","knee":"2 MPa","heavyKnee":"6 MPa","lightLoad":"900 kg","heavyLoad":"900 kg","rearLoad":"900 kg"}""", "gauge it light and heavy")]
    public void What_is_not_gauged_is_unknown_and_named(string input, string named)
    {
        var r = Door.Run("brakes.valve-knee", input);
        Assert.Null(r.Number("knee"));
        Assert.Equal("unknown", r.Verdict("knee"));
        Assert.Contains(named, r.Finding("knee")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_valve_that_begins_earlier_with_more_load_is_looked_at() => Assert.Equal("caution",
        Door.Run("brakes.valve-knee", """{"kind":"load-sensing","knee":"6 MPa","heavyKnee":"2 MPa","lightLoad":"800 kg","heavyLoad":"1400 kg","rearLoad":"1000 kg"}""").Verdict("knee"));
}
