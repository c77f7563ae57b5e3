using Bunit;
using Crossmember.Builds.Searching;
using Crossmember.Web.Features.Brakes;
using Crossmember.Web.Tests.MasterSheet;

namespace Crossmember.Web.Tests.Brakes;

/// <summary>A truck of whose brakes nobody has looked at anything yet.</summary>
public sealed class UnknownBrakesTests() : ShopPages(Demo())
{
    private static string Demo()
    {
        using var stream = typeof(UnknownBrakesTests).Assembly.GetManifestResourceStream("demo/steading.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    [Fact]
    public void Where_nothing_is_known_it_says_what_to_measure_first_and_no_row_of_unknowns()
    {
        Nav.NavigateTo("builds/steading/brakes");
        var page = Render<BrakesPage>(p => p.Add(d => d.Id, "steading").AddCascadingValue(Ana));
        Assert.Empty(page.FindAll(".glance"));
        Assert.Equal(5, page.FindAll(".measure-first li").Count);
        Assert.Equal(5, page.FindAll(".measure-first a[href]").Count);
        Assert.Equal("Measure first", page.Find(".area h2").TextContent);
    }

    [Theory]
    [InlineData("brakes.master.bore brakes.master.kind", "Master cylinder")]
    [InlineData("wheel.front.left.brake.friction wheel.front.right.brake.friction", "Pads or linings, front")]
    [InlineData("wheel.front.*.brake.piston-diameter wheel.front.*.brake.friction", "Calipers, front")]
    [InlineData("brakes.circuits", "How the brake circuits are split")]
    public void A_place_of_the_stock_list_is_called_by_what_its_parts_state(string keys, string title) =>
        Assert.Equal(title, StockKind.Of(new SearchPlace(keys, "stock", true, [], []), DemoShop.Sheet("steading", "working")));
}
