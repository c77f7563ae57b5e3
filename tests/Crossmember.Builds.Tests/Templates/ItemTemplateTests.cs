using Crossmember.Builds.Parameters;
using Crossmember.Builds.Templates;
using Crossmember.Builds.Workshop;

namespace Crossmember.Builds.Tests.Templates;

/// <summary>The templates that the program carries.</summary>
public sealed class ItemTemplateTests
{
    public static TheoryData<string> Shipped => [.. TemplateReader.Shipped.Select(t => t.Id)];

    private static ItemTemplate Of(string id) => TemplateReader.Shipped.Single(t => t.Id == id);

    [Fact]
    public void There_is_one_for_each_type_of_vehicle() =>
        Assert.Equal(["pickup-long", "short-open", "truck-forward", "wagon"], TemplateReader.Shipped.Select(t => t.Id).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void It_is_a_tree_of_thirty_to_sixty_items_under_the_vehicle(string id)
    {
        var items = Of(id).Items;
        Assert.InRange(items.Count, 30, 60);
        Assert.Equal(("vehicle", null), (items[0].Id, items[0].Parent));
        Assert.Equal(items.Count, items.Select(i => i.Id).Distinct().Count());
        Assert.Equal(items.Count, items.Select(i => i.Title).Distinct().Count());
        // Parents stand before their children, so that the list can be read from the top.
        Assert.All(items.Skip(1), (item, i) => Assert.Contains(item.Parent, items.Take(i + 1).Select(p => p.Id)));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Its_ids_may_be_used_and_its_weights_are_shares(string id) => Assert.All(Of(id).Items, i =>
    {
        Assert.True(NewId.IsItem(i.Id), i.Id);
        Assert.InRange(i.Weight, 0, 10);
    });

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Gearbox_and_transfer_case_govern_gears_and_ranges(string id) =>
        Assert.Equal([("gearbox", "gear.*"), ("transfer-case", "range.*")], Of(id).Items.Where(i => i.Governs.Length > 0).Select(i => (i.Id, i.Governs)));

    /// <summary>A key of the table that names an axle, a side, a gear, a range or a condition must find its member in a new build.</summary>
    [Fact]
    public void Every_ordered_set_has_members()
    {
        var sets = ItemTemplate.Sets(4, 2);
        Assert.Equal(Sets.Closed.Order(StringComparer.Ordinal), sets.Select(s => s.Key).Order(StringComparer.Ordinal));
        Assert.Equal(["1", "2", "3", "4"], sets["gear"]!.AsArray().Select(g => (string?)g));
        Assert.Equal(["high"], ItemTemplate.Sets(3, 1)["range"]!.AsArray().Select(g => (string?)g));
        Assert.Equal(ItemTemplate.MostGears, ItemTemplate.Sets(99, 2)["gear"]!.AsArray().Count);
    }

    [Theory]
    [InlineData("id,title\na,b", "columns")]
    [InlineData("id,parent,title,weight,governs,source\nvehicle,,Van,0,,", "source")]
    public void A_template_that_is_no_template_is_our_own_mistake(string csv, string says) =>
        Assert.Contains(says, Assert.Throws<InvalidDataException>(() => TemplateReader.Read("x", csv)).Message, StringComparison.Ordinal);
}
