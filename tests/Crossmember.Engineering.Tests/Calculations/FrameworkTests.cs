using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tests.Calculations;

public class FrameworkTests
{
    private static readonly Probe s_probe = new();

    private static readonly Value s_curve = Value.Of(new Curve([(0, 1), (1000, 1)]));

    private static readonly Value s_lengths = Value.Of(new Members([("a", Value.Of(1))]));

    private const string Whole = """
        {"curve":[["1000 rpm","200 N m"],["3000 rpm","300 N m"]],"speed":"2000 rpm","lengths":{"a":"1 in","b":"2 mm"},"name":"one"}
        """;

    [Fact]
    public void Every_form_goes_in_and_comes_out()
    {
        var r = Door.Run(s_probe, Whole);
        r.Gives("torque", 250, 1e-9); // halfway between 200 and 300
        Assert.Equal(50.8, r["outputs"]!["doubled"]!["value"]!["a"]!.GetValue<double>(), 1e-9);
        Assert.Equal("one", r["outputs"]!["told"]!["value"]!.GetValue<string>());
        Assert.Equal("curve(2000) x 1", r["working"]![0]!["substituted"]!.GetValue<string>());
        Assert.Equal("stand clear", Assert.Single(r["cautions"]!.AsArray())!.GetValue<string>());
    }

    [Fact]
    public void A_curve_is_not_known_beyond_its_points() =>
        Assert.Null(Door.Run(s_probe, Whole.Replace("2000 rpm", "4000 rpm", StringComparison.Ordinal)).Number("torque"));

    [Fact]
    public void A_number_without_end_is_written_as_null() =>
        Assert.Null(Door.Run(s_probe, Whole)["curves"]![0]!["y"]!["values"]![1]);

    // A default stands in at the caller's door only: a sheet that leaves the value out must get unknown, never a silent zero.
    [Fact]
    public void An_input_with_a_default_that_is_left_out_makes_the_result_unknown()
    {
        var outcome = s_probe.Run([s_curve, Value.Of(1), s_lengths, Value.Of("one"), default, Value.Of(9)], true);
        Assert.All(outcome.Outputs, o => Assert.True(o.IsAbsent));
        Assert.Equal(Verdict.Unknown, Assert.Single(outcome.Findings).Verdict);
        Assert.Equal("factor", Assert.Single(outcome.Missing).Input);
    }

    [Fact]
    public void A_map_with_a_member_missing_is_missing_as_a_whole()
    {
        var outcome = s_probe.Run([s_curve, Value.Of(1), Value.Of(new Members([("a", Value.Of(1)), ("b", default)])), Value.Of("one"), Value.Of(1), default], true);
        Assert.Equal(["lengths", "limit"], outcome.Missing.Select(m => m.Input));
        Assert.True(outcome.Outputs[0].IsAbsent);
    }

    [Theory]
    [InlineData(-1, "must be at least 0 rpm")]
    [InlineData(1e13, "is beyond anything on a vehicle")]
    [InlineData(double.NaN, "is no finite number")]
    public void A_value_outside_its_definition_is_answered_with_unknown_and_the_reason(double rpm, string why)
    {
        var outcome = s_probe.Run([s_curve, Value.Of(rpm), s_lengths, Value.Of("one"), Value.Of(1), Value.Of(9)], true);
        Assert.Contains(why, Assert.Single(outcome.Findings).Text);
        Assert.Contains(outcome.Cautions, c => c.Contains(why, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("300 N m", "pass")]
    [InlineData("260 N m", "caution")] // beyond nine tenths of the limit
    [InlineData("240 N m", "fail")]
    public void A_limit_is_watched_before_it_fails(string limit, string verdict) => Assert.Equal(verdict, Door.Run(s_probe, Limited(Whole, limit)).Verdict("torque"));

    [Fact]
    public void Outside_the_validity_a_pass_becomes_a_caution_that_says_so()
    {
        var fast = Whole.Replace("3000 rpm", "9000 rpm", StringComparison.Ordinal).Replace("2000 rpm", "7000 rpm", StringComparison.Ordinal);
        var r = Door.Run(s_probe, Limited(fast, "900 N m"));
        Assert.Equal("caution", r.Verdict("torque"));
        Assert.Contains("outside the range this holds for (up to 6000 rpm)", r.Finding("torque")["text"]!.GetValue<string>());
    }

    [Fact]
    public void The_typed_door_gives_the_same_numbers()
    {
        var e = s_probe.Evaluate(new(new Curve([(0, 100), (1000, 300)]), RotationalSpeed.FromRadiansPerSecond(500), new([("a", Length.FromInches(1))]), "two",
            Ratio.FromDecimalFractions(2), null));
        Assert.Equal(400, e.Result!.Torque!.Value.NewtonMeters, 1e-9);
        Assert.Equal(2, e.Result.Doubled.Items[0].Value.Inches, 1e-12);
        Assert.Equal(400, e.Outcome.Outputs[0].Number, 1e-9);
    }

    [Theory]
    [InlineData(Sense.AtMost, 8, 10, 0.2)]
    [InlineData(Sense.AtMost, 12, 10, -0.2)]
    [InlineData(Sense.AtLeast, 12, 10, 0.2)]
    [InlineData(Sense.AtMost, -12, -10, 0.2)]
    public void A_margin_is_the_distance_to_the_limit_as_a_share_of_it_and_positive_is_safe(Sense sense, double value, double limit, double margin) =>
        Assert.Equal(margin, new Finding("x", Verdict.Pass, "", value, limit, "1", sense, null).Margin!.Value, 1e-12);

    [Fact]
    public void There_is_no_margin_to_a_limit_of_zero_or_none()
    {
        Assert.Null(new Finding("x", Verdict.Pass, "", 1, 0, "1", Sense.AtMost, null).Margin);
        Assert.Null(new Finding("x", Verdict.Pass, "", 1, null, "1", Sense.AtMost, null).Margin);
    }

    [Fact]
    public void A_unit_of_another_dimension_than_its_type_is_refused_when_the_calculation_is_made() =>
        Assert.Contains("mph is none", Assert.ThrowsAny<Exception>(() => new WrongUnit()).InnerException!.Message);

    private static string Limited(string input, string limit) => input.Replace("\"name\"", $"\"limit\":\"{limit}\",\"name\"", StringComparison.Ordinal);

    private sealed class WrongUnit() : Calculation<WrongUnit.Inputs, WrongUnit.Result>(s_probe.About)
    {
        public sealed record Inputs([Input("length", "mph")] Length Length);

        public sealed record Result([Output("length", "m")] Length Length);

        protected override Result Solve(Inputs x, Worksheet w) => new(x.Length);
    }

    // An input that only one kind of part needs is asked for where that kind is named, and then nothing else that is optional.
    [Theory]
    [InlineData("""{"kind":"plain"}""", new[] { "width", "depth", "spare" }, "pass")]
    [InlineData("""{"kind":"boxed","width":"1 mm"}""", new[] { "depth" }, "unknown")]
    [InlineData("""{"kind":"boxed"}""", new[] { "width", "depth" }, "unknown")]
    [InlineData("""{"kind":"boxed","width":"1 mm","depth":"2 mm"}""", new[] { "spare" }, "pass")]
    public void What_turns_out_to_be_needed_is_asked_for(string input, string[] missing, string verdict)
    {
        var r = Door.Run(new KindProbe(), input);
        Assert.Equal(missing, r["missing"]!.AsArray().Select(m => m!["input"]!.GetValue<string>()));
        Assert.Equal(verdict, r.Verdict("fits"));
        if (verdict == "unknown") Assert.Equal($"Not known: {string.Join("; ", missing.Select(m => $"{m} is missing (tape {m})"))}.", r.Finding("fits")["text"]!.GetValue<string>());
    }
}
