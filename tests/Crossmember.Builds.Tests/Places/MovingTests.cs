using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Places;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Tests.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Places;

/// <summary>A mass is looked at elsewhere: what it moves is the statics of docs/derivations/axle-and-wheel-load.md, by hand.</summary>
public sealed class MovingTests
{
    private const string Top = """
        "conditions":{"loaded":[{"id":"crew","mass":"150 kg","at":["1.2 m","0 m","0.5 m"]},{"id":"dog","mass":"20 kg"}]},
        "weighings":[{"date":"2026-01-10","axles":{"front":"1000 kg","rear":"1000 kg"},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
        """;

    private const string Winch = """
        ,{"id":"bumper","parent":"vehicle","title":"Bumper","options":[{"id":"as-found","masses":[{"id":"old","mass":"12 kg","at":["-0.6 m","0 m","0.4 m"]}]},
          {"id":"winch","class":"upgrade","originality":0,"masses":[{"id":"it","mass":"64 kg","at":["-0.64 m","0 m","0.6 m"]}]},{"id":"same","class":"upgrade","originality":0,"like":"winch"}]}
        ,{"id":"axle.rear","parent":"vehicle","title":"Rear axle","options":[{"id":"as-found","parameters":{"axle.rear.rating":"1100 kg"},"masses":[{"id":"axle","mass":"100 kg","at":["2.56 m","0 m","0 m"]}]}]}
        """;

    private static Opened Vehicle(string option = "winch") => Opened.Vehicle(Winch, $$$"""{"id":"working","base":null,"choices":{"bumper":"{{{option}}}"}}""", Top);

    private static Sheet Moved(Opened opened, MassRef which, Place at)
    {
        var build = Moving.With(opened.Build, which, at);
        return new EvaluationPlan(Catalogue.Shipped, build).Evaluate(build, opened.Shop, build.Scenarios["working"]);
    }

    /// <summary>64 kg from 0.64 m ahead of the front axle to 1.92 m behind it: 2.56 m, the whole wheelbase, so that 64 kg go from the front to the rear axle.</summary>
    [Theory]
    [InlineData("winch")]
    [InlineData("same")]
    public void A_mass_moved_by_the_wheelbase_goes_whole_from_one_axle_to_the_other(string option)
    {
        var opened = Vehicle(option);
        var (before, after) = (opened.Sheet(), Moved(opened, MassRef.Of("bumper", option, "it"), new(1.92, 0, 0.6)));
        Assert.Equal(64, Opened.Told(after, "axle.rear.empty.load") - Opened.Told(before, "axle.rear.empty.load"), 9);
        Assert.Equal(-64, Opened.Told(after, "axle.front.empty.load") - Opened.Told(before, "axle.front.empty.load"), 9);
    }

    [Fact]
    public void What_an_option_is_like_stays_where_it_is()
    {
        var moved = Moving.With(Vehicle("same").Build, MassRef.Of("bumper", "same", "it"), new(1.92, 0, 0.6)).Find("bumper")!;
        Assert.Equal(-0.64, moved.Find("winch")!.Masses!.Value[0].At!.Value.X);
        Assert.Equal(1.92, ResolvedOption.Of(moved, moved.Find("same")!).Body.Masses!.Value.Single().At!.Value.X);
    }

    [Fact]
    public void Who_is_aboard_moves_in_that_condition_alone()
    {
        var opened = Vehicle();
        var (before, after) = (opened.Sheet(), Moved(opened, MassRef.Aboard("loaded", "dog"), new(2.56, 0, 0)));
        Assert.True(before.Key("axle.rear.loaded.load")!.Value.Value.IsAbsent);
        Assert.Equal(Opened.Told(before, "axle.rear.empty.load") + 20 + (150 * 1.2 / 2.56), Opened.Told(after, "axle.rear.loaded.load"), 9);
        Assert.Equal(Opened.Told(before, "axle.rear.empty.load"), Opened.Told(after, "axle.rear.empty.load"));
    }

    [Theory]
    [InlineData("bumper", "winch", "other")]
    [InlineData("bumper", "none-such", "it")]
    [InlineData("nothing", "winch", "it")]
    public void What_is_not_there_is_not_moved(string slot, string option, string item)
    {
        var build = Vehicle().Build;
        Assert.Same(build, Moving.With(build, MassRef.Of(slot, option, item), default));
        Assert.Same(build, Moving.With(build, MassRef.Aboard("none-such", "crew"), default));
    }

    [Fact]
    public void Every_mass_is_told_by_how_it_stands_to_the_weighing_the_unplaced_last()
    {
        var sheet = Vehicle().Sheet();
        var masses = PlacedMass.Of(sheet, LedgerLines.Of(sheet, "loaded"));
        Assert.Equal([("it", MassStanding.PutOn), ("old", MassStanding.CameOff), ("crew", MassStanding.Aboard), ("axle", MassStanding.Standing), ("dog", MassStanding.Aboard)], masses.Select(m => (m.Ref.Item, m.Standing)));
        Assert.Null(masses[^1].At);
        Assert.Equal(12, masses[1].Kilograms!.Value, 9);
        Assert.Equal("Bumper: it", masses[0].Title);
        Assert.Equal("crew", masses[2].Title);
    }

    [Theory]
    [InlineData("slots/bumper/options/winch/rope 3/8 in")]
    [InlineData("conditions/loaded/dog/cat")]
    public void A_mass_is_found_again_by_its_key(string key) => Assert.Equal(key, MassRef.FromKey(key)!.Key);

    [Theory]
    [InlineData("")]
    [InlineData("slots/bumper")]
    [InlineData("conditions/loaded")]
    [InlineData("weighings/2026/x")]
    public void Any_other_text_is_no_key(string key) => Assert.Null(MassRef.FromKey(key));

    /// <summary>64 kg at 0.64 m ahead of the front axle take 16 kg off the rear one; the old bumper, 12 kg at 0.6 m, gives 2.8 kg back.</summary>
    [Fact]
    public void Loads_stand_against_their_ratings_with_the_worst_that_their_checks_say()
    {
        var loads = LoadFigures.Of(Vehicle().Sheet(), "empty");
        Assert.Equal([("front", null), ("front", "left"), ("front", "right"), ("rear", null), ("rear", "left"), ("rear", "right")], loads.Select(l => (l.Axle, l.Side)));
        Assert.Equal(1000 - 16 + (12 * 0.6 / 2.56), loads[3].Kilograms!.Value, 9);
        Assert.Equal(1100, loads[3].Rating);
        Assert.Equal(Verdict.Pass, loads[3].Verdict);
        Assert.Equal(loads[3].Kilograms / 1100, loads[3].Share);
        Assert.Null(loads[0].Share);
        Assert.Null(loads[4].Kilograms);
        Assert.Equal(Verdict.Unknown, loads[4].Verdict);
    }
}
