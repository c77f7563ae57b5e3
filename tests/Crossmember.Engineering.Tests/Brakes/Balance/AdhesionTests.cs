using Crossmember.Engineering.Brakes.Balance;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Tests.Brakes.Chain;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Balance;

/// <summary>Inequalities of the rules: where they turn, what they say, and that no grid finds anything worse.</summary>
public class AdhesionTests
{
    // Derived: the truck without a valve fails the M1 rule and passes the N1 rule (0.15 to 0.5); with the valve it passes both.
    [Theory]
    [InlineData("none", "R13-M1", "fail", "pass")]
    [InlineData("fixed", "R13-M1", "pass", "pass")]
    [InlineData("none", "R13-N1", "pass", "pass")]
    [InlineData("fixed", "R13-N1", "pass", "pass")]
    [InlineData("none", "R13-H", "caution", "pass")] // from memory: never more than a caution
    [InlineData("none", "none", "caution", "pass")]
    [InlineData("none", "571.105", "caution", "pass")]
    [InlineData("none", "571.135", "caution", "pass")] // S7.2 asks the order from 0.15 to 0.80: from memory
    [InlineData("fixed", "571.135", "pass", "pass")]
    public void Front_first_by_rule(string valve, string rule, string frontFirst, string band)
    {
        var r = Door.Run("brakes.adhesion", Sheet.Of(valve, ("rule", rule)));
        Assert.Equal(frontFirst, r.Verdict("front-first"));
        Assert.Equal(band, r.Verdict("band"));
    }

    // Derived: at 0.8 g without a valve the rear uses 0.9345 where 0.8 / 0.9 = 0.889 is allowed; with it 0.6793.
    [Theory]
    [InlineData("none", "caution")]
    [InlineData("fixed", "pass")]
    public void Nine_tenths_by_571_135(string valve, string verdict)
    {
        var r = Door.Run("brakes.adhesion", Sheet.Of(valve, ("rule", "571.135")));
        Assert.Equal(verdict, r.Verdict("nine-tenths"));
        Assert.Contains("Local law judges a conversion", r.Finding("nine-tenths")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Derived: the demand at z 0.15 allows 0.2588, at 0.61 0.8; the truck's front uses 0.2050 and about 0.62: enough. With rear brakes dead 0.8 g front only needs far more.
    [Theory]
    [InlineData("5442.7 N", "pass")]
    [InlineData("0 N", "caution")]
    public void Demand_on_every_road(string rear, string verdict) =>
        Assert.Equal(verdict, Door.Run("brakes.adhesion", Sheet.Of("none", ("rearForce", rear), ("rule", "R13-M1"))).Verdict("demand"));

    [Fact]
    public void Every_finding_by_a_rule_defers_to_local_law_and_none_nags()
    {
        foreach (var rule in new[] { "571.135", "R13-H", "R13-M1", "R13-N1" })
        {
            var r = Door.Run("brakes.adhesion", Sheet.Of("fixed", ("rule", rule)));
            foreach (var f in r["findings"]!.AsArray())
            {
                var text = f!["text"]!.GetValue<string>();
                Assert.True(text.Contains("Local law", StringComparison.Ordinal) || text == "The chosen rule does not ask this.", text);
            }
        }
    }

    // N1 with too much at the rear: front first fails, and so do the bands it takes instead; a little too much is taken by the bands.
    [Theory]
    [InlineData("7400 N", "pass", "pass")]
    [InlineData("12000 N", "fail", "fail")]
    public void N1_takes_bands_instead(string rear, string frontFirst, string alternative)
    {
        var r = Door.Run("brakes.adhesion", Sheet.Of("none", ("rearForce", rear), ("rearThreshold", "0 MPa"), ("rule", "R13-N1")));
        Assert.True(r.Number("frontOverRear") < 0);
        Assert.Equal(frontFirst, r.Verdict("front-first"));
        Assert.Equal(alternative, r.Verdict("alternative"));
    }

    [Fact]
    public void A_fitted_valve_of_unknown_knee_leaves_it_unknown_and_names_the_gauge()
    {
        var r = Door.Run("brakes.adhesion", Sheet.Of("fixed", ("valveKnee", null), ("rule", "R13-M1")));
        Assert.Null(r.Number("frontOverRear"));
        Assert.Equal("unknown", r.Verdict("front-first"));
        Assert.Contains("gauge at a front and a rear bleeder", r.Finding("front-first")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_rule_it_asks_for_one() =>
        Assert.Contains("pick the rule", Door.Run("brakes.adhesion", Sheet.Of("none", ("rule", null))).Finding("front-first")["text"]!.GetValue<string>(), StringComparison.Ordinal);

    // A grid of 4,000 points never finds anything worse than the exact answer, and comes close to it.
    [Fact]
    public void No_grid_finds_worse_than_the_exact_extremum() =>
        Gen.Select(Truck.AnyRig, Truck.AnyLoad, Gen.Int[0, 5]).Sample((rig, load, which) =>
        {
            Span<UsePiece> room = stackalloc UsePiece[UsePiece.Most];
            var pieces = room[..UsePiece.Fill(room, rig, load)];
            var limit = which switch
            {
                0 => GripLimit.FrontOverRear(0.15, 0.8), 1 => GripLimit.RearAtMost(0.15, 0.8, 0, 1 / 0.9), 2 => GripLimit.FrontAtMost(0.1, 0.61, 0.0823529, 1 / 0.85),
                3 => GripLimit.RearAtMost(0.5, 0.61, -0.42, 2), 4 => GripLimit.FrontAtLeast(0.15, 0.3, -0.08, 1), _ => GripLimit.FrontOverRear(0.3, 0.45),
            };
            GripLimit? unless = which == 5 ? GripLimit.RearAtMost(0.3, 0.45, 0.05, 1) : null;
            var worst = Worst.Of(limit, pieces, load, unless);
            var (least, reached) = (double.PositiveInfinity, false);
            var end = Math.Min(limit.To, 0.998 * load.Behind / load.Height);
            for (var i = 0; i <= 4000; i++)
            {
                var z = limit.From + ((end - limit.From) * i / 4000);
                if (Utilization.At(z, rig, load) is not { } use) continue;
                reached = true;
                double One(in GripLimit l) => l.Base + (l.Slope * z) + (l.Front * use.Front) + (l.Rear * use.Rear);
                least = Math.Min(least, unless is { } other ? Math.Max(One(limit), One(other)) : One(limit));
            }
            if (!reached) return;
            Assert.True(worst.Margin <= least + 1e-9, $"{which} {rig} {load}: {worst} against {least}");
            if (end == limit.To) Assert.True(worst.Margin >= least - 0.01 - (0.01 * Math.Abs(least)), $"{which} {rig} {load}: {worst} against {least}");
        }, iter: 200);

    // The pieces together are the utilization curve.
    [Fact]
    public void Pieces_are_the_curve_itself() =>
        Gen.Select(Truck.AnyRig, Truck.AnyLoad, Gen.Double[0.02, 0.9]).Sample((rig, load, z) =>
        {
            Span<UsePiece> room = stackalloc UsePiece[UsePiece.Most];
            var n = UsePiece.Fill(room, rig, load);
            if (Utilization.At(z, rig, load) is not { } use) return;
            var piece = room[0];
            for (var i = 0; i < n; i++) if (z >= room[i].From) piece = room[i];
            Assert.Equal(use.Front, piece.Front(z, load), 1e-9);
            Assert.Equal(use.Rear, piece.Rear(z, load), 1e-9);
        });
}
