using Crossmember.Builds.Evaluation;

namespace Crossmember.Builds.Tests.Evaluation;

public sealed class UnsettledTests
{
    [Fact]
    public void What_most_checks_wait_for_comes_first_with_how_to_find_it_out()
    {
        var list = Unsettled.Of(Opened.Vehicle("").Sheet());
        Assert.NotEmpty(list);
        Assert.Equal(list.OrderByDescending(u => u.Checks).Select(u => u.Checks), list.Select(u => u.Checks));
        Assert.Contains(list, u => u.What == "mass" && u.Measure.Contains("scale", StringComparison.Ordinal));
        Assert.Contains(list, u => u.What == "wheel.{axle}.{side}.tire.service-description" && u.Checks >= 4);
        Assert.All(list, u => Assert.True(u.Measure.Length > 5, u.What));
    }

    [Fact]
    public void What_is_known_is_not_asked_for()
    {
        var list = Unsettled.Of(Opened.Vehicle(""",{"id":"tires","parent":"vehicle","title":"Tires","options":[{"id":"as-found","parameters":{"wheel.*.*.tire.service-description":"113Q"}}]}""").Sheet());
        Assert.DoesNotContain(list, u => u.What == "wheel.{axle}.{side}.tire.service-description");
    }
}
