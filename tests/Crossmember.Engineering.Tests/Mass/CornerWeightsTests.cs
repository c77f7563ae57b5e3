using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Mass;

public class CornerWeightsTests
{
    // Derived: LF 545, RF 520, LR 560, RR 525 kg, wheelbase 2560, tracks 1460 and 1480 mm -> 2150 kg, 1291.9 mm, 20.5 mm left, front 49.53 %, RF + LR 50.23 %.
    [Fact]
    public void Four_readings_give_mass_place_and_diagonal()
    {
        var r = Read(545, 520, 560, 525);
        r.Gives("mass", 2150, 1e-9);
        r.Gives("centerX", 1291.9, 0.05);
        r.Gives("centerY", -20.5, 0.05);
        r.Gives("frontShare", 49.53, 0.005);
        r.Gives("cross", 50.23, 0.005);
        Assert.Equal("pass", r.Verdict("cross"));
    }

    // Moments about any point agree: here about the contact of the left rear wheel.
    [Fact]
    public void Moments_about_a_wheel_balance() =>
        Gen.Double[200, 900].Array[4].Sample(kg =>
        {
            var r = Read(kg[0], kg[1], kg[2], kg[3]);
            double all = kg.Sum(), x = r.Number("centerX")!.Value / 1000, y = r.Number("centerY")!.Value / 1000;
            Assert.Equal((kg[0] + kg[1]) * 2.56, all * (2.56 - x), 1e-9 * all);
            Assert.Equal((kg[1] * 0.73) + (kg[3] * 0.74) - (kg[0] * 0.73) - (kg[2] * 0.74), all * y, 1e-9 * all);
        });

    [Fact]
    public void Left_and_right_change_places_and_only_the_side_changes_sign() =>
        Gen.Double[200, 900].Array[4].Sample(kg =>
        {
            JsonObject one = Read(kg[0], kg[1], kg[2], kg[3]), other = Read(kg[1], kg[0], kg[3], kg[2]);
            Assert.Equal(one.Number("centerX")!.Value, other.Number("centerX")!.Value, 1e-9);
            Assert.Equal(one.Number("centerY")!.Value, -other.Number("centerY")!.Value, 1e-9);
            Assert.Equal(100, one.Number("cross")!.Value + other.Number("cross")!.Value, 1e-9);
        });

    [Theory]
    [InlineData(0, 520, 560, 525, "left front")]
    [InlineData(700, 520, 560, 3, "right rear")]
    public void Three_wheels_are_no_answer_and_the_fourth_is_named(double lf, double rf, double lr, double rr, string named)
    {
        var r = Read(lf, rf, lr, rr);
        Assert.Equal("fail", r.Verdict("all-wheels"));
        Assert.Contains(named, r.Finding("all-wheels")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Null(r.Number("centerX"));
    }

    [Fact]
    public void A_twisted_frame_shows_across_the_diagonal() => Assert.Equal("caution", Read(620, 450, 480, 600).Verdict("cross"));

    private static JsonObject Read(double lf, double rf, double lr, double rr) => Door.Run("mass.corner-weights", string.Create(CultureInfo.InvariantCulture,
        $$"""{"frontLeft":"{{lf:R}} kg","frontRight":"{{rf:R}} kg","rearLeft":"{{lr:R}} kg","rearRight":"{{rr:R}} kg","wheelbase":"2560 mm","frontTrack":"1460 mm","rearTrack":"1480 mm"}"""));
}
