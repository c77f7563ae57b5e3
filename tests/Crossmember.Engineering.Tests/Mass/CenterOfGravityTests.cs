using System.Globalization;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Mass;

public class CenterOfGravityTests
{
    // Derived: 2150 kg at (1.2919, 0.72) m with bumper and winch 68 kg (-0.62, 0.62), spare carrier 74 kg (3.30, 1.00) and rack 45 kg (1.35, 1.95):
    // 2337 kg, x 1.3010, z 0.7496 m; axle changes +84.47/-16.47, -21.39/+95.39, +21.27/+23.73 kg.
    private static readonly (double Kg, double X, double Z)[] s_items = [(68, -0.62, 0.62), (74, 3.30, 1.00), (45, 1.35, 1.95)];

    [Fact]
    public void Bumper_carrier_and_rack_move_it()
    {
        double m = 2150 + s_items.Sum(i => i.Kg), mx = (2150 * 1.2919) + s_items.Sum(i => i.Kg * i.X), mz = (2150 * 0.72) + s_items.Sum(i => i.Kg * i.Z);
        var r = Run(m, mx, mz, 0, 0);
        r.Gives("centerX", 1301.0, 0.05);
        r.Gives("height", 749.6, 0.05);
    }

    // Each item one after the other through mass.added-load comes to the same place as all at once.
    [Fact]
    public void Adding_one_load_after_the_other_comes_to_the_same_place()
    {
        double m = 2150, x = 1.2919, h = 0.72;
        double[] front = [84.47, -21.39, 21.27], rear = [-16.47, 95.39, 23.73];
        for (var i = 0; i < 3; i++)
        {
            var r = Door.Run("mass.added-load", string.Create(CultureInfo.InvariantCulture,
                $$"""{"total":"{{m}} kg","centerX":"{{x:R}} m","centerHeight":"{{h:R}} m","wheelbase":"2560 mm","added":"{{s_items[i].Kg}} kg","behindFrontAxle":"{{s_items[i].X}} m","addedHeight":"{{s_items[i].Z}} m"}"""));
            r.Gives("frontChange", front[i], 0.006);
            r.Gives("rearChange", rear[i], 0.006);
            (m, x, h) = (m + s_items[i].Kg, r.Number("centerX")!.Value / 1000, r.Number("height")!.Value / 1000);
        }
        Assert.Equal(2337, m);
        Assert.Equal(1.3010, x, 0.00005);
        Assert.Equal(0.7496, h, 0.00005);
    }

    // A frame that stands higher behind: the height at the center of gravity lies on the line between the axles.
    [Fact]
    public void Height_over_the_ground_follows_the_slope_of_the_frame() =>
        Gen.Select(Gen.Double[0.1, 0.9], Gen.Double[0.3, 0.9], Gen.Double[0.3, 0.9], Gen.Double[-0.1, 0.5]).Sample((share, front, rear, z) =>
        {
            var r = Run(2000, 2000 * share * 2.56, 2000 * z, front, rear);
            Assert.Equal((1000 * z) + (1000 * ((front * (1 - share)) + (rear * share))), r.Number("height")!.Value, 1e-6);
        });

    [Theory]
    [InlineData(-10, "ahead of the front axle")]
    [InlineData(6000, "behind the rear axle")]
    public void Outside_the_wheelbase_is_no_answer(double momentX, string where)
    {
        var r = Run(2000, momentX, 500, 0, 0);
        Assert.Equal("fail", r.Verdict("between-axles"));
        Assert.Contains(where, r.Finding("between-axles")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Null(r.Number("centerX"));
        Assert.Null(r.Number("height"));
    }

    [Fact]
    public void Without_the_frame_height_only_the_height_over_the_ground_is_unknown()
    {
        var r = Door.Run("mass.center-of-gravity", """{"total":"2000 kg","momentX":"2500 kg m","momentZ":"400 kg m","wheelbase":"2560 mm"}""");
        r.Gives("centerZ", 200, 1e-9);
        Assert.Null(r.Number("height"));
        Assert.Equal("unknown", r.Verdict("usual-height"));
        Assert.Contains("frame datum", r.Finding("usual-height")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // A load behind the rear axle puts more than itself on the rear.
    [Fact]
    public void What_hangs_behind_the_rear_axle_lifts_the_front()
    {
        var r = Door.Run("mass.added-load", """{"total":"2150 kg","centerX":"1291.9 mm","centerHeight":"720 mm","wheelbase":"2560 mm","added":"74 kg","behindFrontAxle":"3.3 m","addedHeight":"1 m"}""");
        Assert.True(r.Number("rearChange") > 74 && r.Number("frontChange") < 0);
        Assert.Equal(74, r.Number("rearChange")!.Value + r.Number("frontChange")!.Value, 1e-9);
    }

    // 2000 kg hung 7 m behind the front axle of 2.56 m: the front leaves the ground.
    [Fact]
    public void A_load_that_lifts_an_axle_is_no_answer()
    {
        var r = Door.Run("mass.added-load", """{"total":"2150 kg","centerX":"1291.9 mm","centerHeight":"720 mm","wheelbase":"2560 mm","added":"2000 kg","behindFrontAxle":"7 m","addedHeight":"1 m"}""");
        Assert.Equal("fail", r.Verdict("front-kept"));
        Assert.Null(r.Number("centerX"));
    }

    private static System.Text.Json.Nodes.JsonObject Run(double m, double mx, double mz, double front, double rear) => Door.Run("mass.center-of-gravity", string.Create(CultureInfo.InvariantCulture,
        $$"""{"total":"{{m:R}} kg","momentX":"{{mx:R}} kg m","momentZ":"{{mz:R}} kg m","wheelbase":"2560 mm","frontDatumHeight":"{{front:R}} m","rearDatumHeight":"{{rear:R}} m"}"""));
}
