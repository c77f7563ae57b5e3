using Crossmember.Builds.Workshop;
using CsCheck;

namespace Crossmember.Builds.Tests.Workshop;

public sealed class NewIdTests
{
    [Theory]
    [InlineData("1966 Tarn, long!", "1966-tarn-long")]
    [InlineData("  Shop  ", "shop-2")]
    [InlineData("New", "new-2")]
    [InlineData("Heron", "heron-3")]
    [InlineData("?!", null)]
    public void An_id_is_made_from_the_name_and_told_apart_by_a_number(string title, string? id) => Assert.Equal(id, NewId.Of(title, ["heron", "heron-2"]));

    [Theory]
    [InlineData("heron", true)]
    [InlineData("Heron_2.b", true)]
    [InlineData("", false)]
    [InlineData("a/b", false)]
    [InlineData("shop", false)]
    public void A_build_may_be_called_so(string id, bool may) => Assert.Equal(may, NewId.IsBuild(id));

    [Theory]
    [InlineData("axle.front.hubs", true)]
    [InlineData("Axle", false)]
    [InlineData("axle..hubs", false)]
    [InlineData("none", false)]
    public void An_item_may_be_called_so(string id, bool may) => Assert.Equal(may, NewId.IsItem(id));

    [Fact]
    public void Whatever_the_name_the_id_may_be_used_and_is_not_taken() => Gen.String.Array[0, 4].Sample(names =>
    {
        List<string> taken = [];
        foreach (var name in names)
            if (NewId.Of(name, taken) is { } id)
            {
                Assert.True(NewId.IsItem(id) && NewId.IsBuild(id), id);
                Assert.DoesNotContain(id, taken);
                taken.Add(id);
            }
    });
}
