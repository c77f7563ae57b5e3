using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

public class RollTests
{
    // Derived: 35 N/mm at each side, springs 0.80 m apart: 35000 x 0.64 / 2 = 11200 N m/rad = 195.5 N m/deg.
    [Fact]
    public void Two_springs_hold_the_body_by_half_the_base_squared() =>
        Door.Run("springs.roll-stiffness", """{"wheelRate":"35 N/mm","springBase":"0.80 m"}""").Gives("rollStiffness", 195.5, 0.05);

    // Independent: lean the body a little, each spring gives its own force at its own lever.
    [Fact]
    public void Roll_stiffness_agrees_with_the_moments_of_two_springs() => Gen.Select(Gen.Double[10, 150], Gen.Double[500, 1500], Gen.Double[0, 900]).Sample((k, s, bar) =>
    {
        const double lean = 0.001; // rad
        double left = k * 1000 * lean * s / 2000, right = -left; // N
        var moment = ((left - right) * s / 2000) + (bar * 180 / Math.PI * lean);
        var with = bar > 0 ? $$""","bar":"{{bar:R}} N m/deg" """ : "";
        var r = Door.Run("springs.roll-stiffness", $$"""{"wheelRate":"{{k:R}} N/mm","springBase":"{{s:R}} mm"{{with}} }""");
        Assert.Equal(moment / lean * Math.PI / 180, r.Number("rollStiffness")!.Value, 1e-9 * moment / lean);
        Assert.Equal(bar / r.Number("rollStiffness")!.Value, r.Number("barShare")!.Value / 100, 1e-9);
    }, iter: 40);

    // With the helper engaged the axle holds 82.0 N/mm, not 38.2: the stop's rate does not count, and where nobody knows it is said.
    [Fact]
    public void A_helper_that_touches_holds_the_body_too()
    {
        double Stiffness(string more) => Door.Run("springs.roll-stiffness", $$"""{"wheelRate":"38.2 N/mm","springBase":"1.1176 m"{{more}} }""").Number("rollStiffness")!.Value;
        Assert.Equal(38200 * 1.1176 * 1.1176 / 2 * Math.PI / 180, Stiffness(""), 1e-6);
        Assert.Equal(82000 * 1.1176 * 1.1176 / 2 * Math.PI / 180, Stiffness(""","carryingRate":"82 N/mm","helperRate":"43.8 N/mm" """), 1e-6);
        Assert.Contains("left out", Door.Run("springs.roll-stiffness", """{"wheelRate":"38.2 N/mm","springBase":"1.1 m","helperRate":"43.8 N/mm"}""")["cautions"]!.ToJsonString());
    }

    // Sunk by its springs, the frame takes the roll center down with it: only the sum of both counts, and lower means more lean.
    [Fact]
    public void Roll_centers_go_with_the_frame() => s_trucks.Sample(t =>
    {
        if (t.Run().Number("roll") is not { } lean) return;
        (t with { Sunk = 0.08 }).Run().Gives("roll", lean, 1e-9 * Math.Max(1, Math.Abs(lean)));
        if ((t with { RollCenter = t.RollCenter - 0.05 }).Run().Number("roll") is { } lower) Assert.True(lower > lean);
    }, iter: 30);

    private static readonly Gen<Truck> s_trucks =
        Gen.Select(Gen.Double[700, 1600], Gen.Double[700, 2200], Gen.Double[300, 1500], Gen.Double[300, 1500], Gen.Double[0.6, 1.1], Gen.Double[1.3, 1.8], Gen.Double[0.25, 0.55])
            .Select(t => new Truck(t.Item1, t.Item2, t.Item3, t.Item4, t.Item5, t.Item6, t.Item7));

    // Invariant: what the outside wheels gain, times the tracks, holds up the whole vehicle's moment about the ground and the weight that has leaned out.
    [Fact]
    public void Moments_about_the_ground_balance() => s_trucks.Sample(t =>
    {
        var r = t.Run();
        if (r.Number("roll") is not { } degrees) return;
        double a = 0.4, g = 9.80665, arm = t.Arm, roll = degrees * Math.PI / 180;
        var wheels = (r.Number("frontTransfer")!.Value + r.Number("rearTransfer")!.Value) * g * t.Track;
        var pushed = ((t.Front + t.Rear) * g * a * t.Height) + (t.Sprung * g * arm * roll);
        Assert.Equal(pushed, wheels, 1e-6 * pushed);
    }, iter: 60);

    // Independent: the lean found by halving the interval on the moment about the roll axis, weight leaning out as it goes.
    [Fact]
    public void The_lean_agrees_with_equilibrium_by_bisection() => s_trucks.Sample(t =>
    {
        double a = 0.4, g = 9.80665, K = (t.FrontStiffness + t.RearStiffness) * 180 / Math.PI, low = -10, high = 10; // N m/rad, rad
        if (K <= t.Sprung * g * t.Arm * 1.05) return;
        for (var i = 0; i < 100; i++)
        {
            var mid = (low + high) / 2;
            (low, high) = t.Sprung * g * ((a * t.Arm) + (t.Arm * mid)) > K * mid ? (mid, high) : (low, mid);
        }
        t.Run().Gives("roll", low * 180 / Math.PI, 1e-6);
    }, iter: 60);

    // The trap: leaving the weight that leans out of it makes the lean a quarter too small here.
    [Fact]
    public void The_weight_that_leans_out_is_counted()
    {
        var r = new Truck(1200, 1200, 349.066, 349.066, 0.9, 1.5, 0.5).Run();
        r.Gives("rollPerGee", 18.61, 0.01);
        Assert.Equal(14.05, 2000 * 9.80665 * 0.5 / 40000 * 180 / Math.PI, 0.005);
    }

    [Fact]
    public void A_body_that_its_springs_cannot_hold_is_told_and_gives_no_lean()
    {
        var r = new Truck(1200, 1200, 80, 80, 1.0, 1.5, 0.4).Run();
        Assert.Equal("fail", r.Verdict("stable"));
        Assert.Null(r.Number("rollPerGee"));
        Assert.Equal("unknown", r.Verdict("lift"));
    }

    // 8 deg per g is soft for a truck (common practice, no source), never worse than a caution: 9806.65 (1 + 1 / 0.13963) = 80042 N m/rad, 698.5 N m/deg each axle.
    [Theory]
    [InlineData(700, "pass")]
    [InlineData(697, "caution")]
    public void A_body_that_leans_a_lot_gets_a_caution(double stiffness, string verdict) =>
        Assert.Equal(verdict, new Truck(1200, 1200, stiffness, stiffness, 0.9, 1.5, 0.5).Run().Verdict("lean"));

    // At the sideways acceleration told, an inside wheel carries nothing: its half of the axle has moved over.
    [Fact]
    public void The_lift_told_is_where_a_wheel_carries_nothing() => s_trucks.Sample(t =>
    {
        if (t.Run().Number("liftAt") is not { } lift || lift > 0.79) return;
        var r = t.Run(lift);
        double front = (t.Front / 2) - r.Number("frontTransfer")!.Value, rear = (t.Rear / 2) - r.Number("rearTransfer")!.Value;
        Assert.Equal(0, Math.Min(front, rear), 1e-6 * t.Front);
        Assert.Equal("caution", t.Run(lift * 1.01).Verdict("lift"));
        Assert.Contains("before the", t.Run(lift * 1.01).Finding("lift")["text"]!.GetValue<string>());
        Assert.Equal("caution", t.Run(lift / 1.1).Verdict("lift"));
        if (lift > 0.15) Assert.Equal("pass", t.Run(lift / 1.4).Verdict("lift"));
    }, iter: 60);

    [Fact]
    public void Front_and_rear_change_places() => s_trucks.Sample(t =>
    {
        JsonObject a = t.Run(), b = new Truck(t.Rear, t.Front, t.RearStiffness, t.FrontStiffness, t.Height, t.Track, t.RollCenter).Run();
        if (a.Number("frontTransfer") is not { } front) return;
        b.Gives("rearTransfer", front, 1e-6 * front);
        b.Gives("roll", a.Number("roll")!.Value, 1e-9);
    }, iter: 30);

    /// <param name="Front">Load on the front axle, kg.</param>
    /// <param name="FrontStiffness">N m/deg.</param>
    /// <param name="RollCenter">m, of both axles; unsprung 200 kg at 0.4 m each.</param>
    private sealed record Truck(double Front, double Rear, double FrontStiffness, double RearStiffness, double Height, double Track, double RollCenter)
    {
        public double Sunk { get; init; }

        public double Sprung => Front + Rear - 400;

        public double Arm => ((((Front + Rear) * Height) - (400 * 0.4)) / Sprung) - RollCenter;

        public JsonObject Run(double lateral = 0.4) => Door.Run("springs.body-roll", $$"""
            {"centerHeight":"{{Height:R}} m","frontLoad":"{{Front:R}} kg","rearLoad":"{{Rear:R}} kg","frontUnsprung":"200 kg","rearUnsprung":"200 kg","lateral":"{{lateral:R}}",
             "frontStiffness":"{{FrontStiffness:R}} N m/deg","rearStiffness":"{{RearStiffness:R}} N m/deg","frontRollCenter":"{{1000 * (RollCenter - 0.6):R}} mm","rearRollCenter":"{{1000 * (RollCenter - 0.6 - Sunk):R}} mm","frontDatumHeight":"600 mm","rearDatumHeight":"{{600 + (1000 * Sunk):R}} mm",
             "frontTrack":"{{Track:R}} m","rearTrack":"{{Track:R}} m","frontRadius":"0.4 m","rearRadius":"0.4 m"}
            """);
    }
}
