using Crossmember.Engineering.Calculations;
using CsCheck;
using UnitsNet;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>What the frame promises of every calculation, shown on a small one.</summary>
public sealed class FrameTests
{
    private static readonly Lever s_lever = new();

    [Fact]
    public void The_typed_door_and_the_plain_one_give_the_same()
    {
        var typed = s_lever.Evaluate(new(Force.FromNewtons(100), Length.FromMeters(0.3), Torque.FromNewtonMeters(50)));
        var plain = s_lever.Run([Value.Of(100), Value.Of(0.3), Value.Of(50)], true);
        Assert.Equal(30, typed.Result!.Torque.NewtonMeters, 12);
        Assert.Equal(30, plain.Outputs[0].Number, 12);
        Assert.Equal(typed.Outcome.Working, plain.Working);
    }

    [Fact]
    public void A_missing_needed_input_makes_result_and_checks_unknown()
    {
        var outcome = s_lever.Run([Value.Of(100), default, Value.Of(50)], false);
        Assert.True(outcome.Outputs[0].IsAbsent);
        Assert.Equal(Verdict.Unknown, Assert.Single(outcome.Findings).Verdict);
        Assert.Contains("tape it", outcome.Findings[0].Text, StringComparison.Ordinal);
        Assert.Contains(outcome.Missing, m => m.Input == "arm");
    }

    // A linkage takes a dozen tapings: the sentence stays one that can be read, and nothing is left out of the list.
    [Fact]
    public void Of_many_missing_inputs_the_sentence_names_the_first_and_counts_the_rest()
    {
        var linkage = CalculationList.Find("steering.bump-steer")!;
        var outcome = linkage.Run(new Value[linkage.InputSpecs.Count], false);
        Assert.EndsWith("; and 10 more.", outcome.Findings[0].Text, StringComparison.Ordinal);
        Assert.Equal(3, outcome.Findings[0].Text.Split(" is missing").Length - 1);
        Assert.Equal(linkage.InputSpecs.Count, outcome.Missing.Count);
    }

    [Fact]
    public void A_missing_limit_leaves_the_result_and_makes_only_its_check_unknown()
    {
        var outcome = s_lever.Run([Value.Of(100), Value.Of(0.3), default], false);
        Assert.Equal(30, outcome.Outputs[0].Number, 12);
        Assert.Equal(Verdict.Unknown, Assert.Single(outcome.Findings).Verdict);
        Assert.True(s_lever.IsOnlyLimit(s_lever.InputIndex("allowed")));
        Assert.False(s_lever.IsOnlyLimit(s_lever.InputIndex("arm")));
    }

    [Fact]
    public void Outside_its_definition_an_input_gives_no_number_that_looks_right()
    {
        var outcome = s_lever.Run([Value.Of(100), Value.Of(-0.3), Value.Of(50)], false);
        Assert.True(outcome.Outputs[0].IsAbsent);
        Assert.Equal(Verdict.Unknown, Assert.Single(outcome.Findings).Verdict);
        Assert.Contains(outcome.Cautions, c => c.Contains("more than 0", StringComparison.Ordinal));
    }

    [Fact]
    public void Outside_the_validity_a_pass_becomes_a_caution_that_says_so()
    {
        var outcome = s_lever.Run([Value.Of(1), Value.Of(3), Value.Of(50)], false);
        var finding = Assert.Single(outcome.Findings);
        Assert.Equal(Verdict.Caution, finding.Verdict);
        Assert.Contains("outside the range", finding.Text, StringComparison.Ordinal);
        // A fail stays a fail: being out of range does not excuse it.
        Assert.Equal(Verdict.Fail, Assert.Single(s_lever.Run([Value.Of(1000), Value.Of(3), Value.Of(50)], false).Findings).Verdict);
    }

    [Fact]
    public void Working_is_written_only_for_somebody_who_looks()
    {
        Assert.Empty(s_lever.Run([Value.Of(100), Value.Of(0.3), Value.Of(50)], false).Working);
        var line = Assert.Single(s_lever.Run([Value.Of(100), Value.Of(0.3), Value.Of(50)], true).Working);
        Assert.Equal(("T", "F a", "100 x 0.3", 30.0, "N m"), (line.Symbol, line.Formula, line.Substituted, Math.Round(line.Value, 9), line.Unit));
    }

    [Theory]
    [InlineData(30, 50, 0.4)]
    [InlineData(60, 50, -0.2)]
    [InlineData(30, 0, null)]
    public void Margins_are_shares_of_the_limit_and_positive_is_safe(double value, double limit, double? margin) =>
        Assert.Equal(margin, new Finding("c", Verdict.Pass, "", value, limit, "N m", Sense.AtMost, null).Margin is { } m ? Math.Round(m, 9) : null);

    [Fact]
    public void At_least_counts_the_other_way() =>
        Assert.Equal(0.5, new Finding("c", Verdict.Pass, "", 60, 40, "N", Sense.AtLeast, null).Margin);

    [Fact]
    public void Values_are_equal_bit_for_bit()
    {
        Assert.NotEqual(Value.Of(0.0), Value.Of(-0.0));
        Assert.Equal(Value.Of(double.NaN), Value.Of(double.NaN));
        Assert.NotEqual(Value.Of("1"), Value.Of(1.0));
        Assert.Equal(Value.Of(new Members([("a", Value.Of(1))])), Value.Of(new Members([("a", Value.Of(1))])));
        Assert.NotEqual(Value.Of(new Curve([(1, 2), (2, 3)])), Value.Of(new Curve([(1, 2), (2, 4)])));
        Assert.True(default(Value).IsAbsent);
        Gen.Double.Sample(d => Assert.Equal(Value.Of(d).GetHashCode(), Value.Of(d).GetHashCode()));
    }

    [Fact]
    public void A_curve_is_straight_between_its_points_and_unknown_beyond_them()
    {
        var curve = new Curve([(0, 10), (10, 30), (20, 30)]);
        Assert.Equal(20, curve.At(5));
        Assert.Equal(30, curve.At(15));
        Assert.Null(curve.At(21));
        Assert.Null(curve.At(-0.1));
    }

    private sealed class Lever() : Calculation<Lever.Inputs, Lever.Result>(new()
    {
        Id = "test.lever", Version = 1, Title = "Lever", Purpose = "test", Formula = "T = F a", Validity = "test", Sources = [], Examples = [],
        Checks = [new("allowed", Sense.AtMost, "Is it allowed?", "allowed")],
        Trends = [new("force", "torque", '+', 1, 100), new("arm", "torque", '+', 0.1, 1)],
    })
    {
        public sealed record Inputs(
            [Input("force", "N", AtLeast = 0)] Force Force, [Input("arm", "m", MoreThan = 0, High = 2, Measure = "tape it")] Length Arm, [Input("allowed", "N m")] Torque? Allowed);

        public sealed record Result([Output("torque", "N m")] Torque Torque);

        protected override Result Solve(Inputs x, Worksheet w)
        {
            double F = x.Force.Newtons, a = x.Arm.Meters; // N, m
            var T = F * a;
            w.Line("T", "F a", $"{F} x {a}", T, "N m");
            if (x.Allowed is { } allowed) w.AtMost("allowed", T, allowed.NewtonMeters, "N m", $"{T} N m of {allowed.NewtonMeters} N m.");
            return new(Torque.FromNewtonMeters(T));
        }
    }
}
