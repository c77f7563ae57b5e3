using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>What is put on board after a weighing did not stand on the scale.</summary>
public sealed class WeighedConditionTests
{
    [Fact]
    public void Sand_put_into_the_weighed_condition_later_adds_to_it_and_leaves_the_others_alone()
    {
        var opened = Evaluation.Opened.Vehicle("", top: """
            "conditions":{"loaded":[{"id":"crew","mass":"150 kg","at":["1.2 m","0 m","0.5 m"]}]},
            "weighings":[{"date":"2026-01-10","axles":{"front":"1075 kg","rear":"1075 kg"},"wheelbase":"2560 mm","condition":"loaded","fitted":{}}],
            """);
        var sand = opened.Build with
        {
            Conditions = opened.Build.Conditions.SetItem("loaded", new("loaded", [.. opened.Build.Conditions["loaded"].Items, new MassItem("sand", 100, new(2, 0, 0.5), Basis.Measured)])),
        };
        Sheet before = opened.Sheet(), after = opened.Plan.Evaluate(sand, opened.Shop, sand.Scenarios["working"]);
        Assert.Equal(2150, Evaluation.Opened.Told(before, "mass.loaded.total"), 9);
        Assert.Equal(2250, Evaluation.Opened.Told(after, "mass.loaded.total"), 9);
        Assert.Equal(2000, Evaluation.Opened.Told(after, "mass.empty.total"), 9);
    }
}
