using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Tests.VehicleMass;

/// <summary>What the page shows of the vehicle as it stands. Loads by hand: 64 lb at 25 in ahead put 80 lb on the front axle and take 16 off the rear.</summary>
public sealed class VehiclePageTests : VehiclePages
{
    [Fact]
    public void Loads_stand_against_their_ratings_in_the_table_and_on_the_drawing()
    {
        var page = Page();
        Assert.Equal(["2080 lb", "2500 lb", "83 %", "good"], Row(page, "Front axle"));
        Assert.Equal(["1484 lb", "3000 lb", "49 %", "good"], Row(page, "Rear axle"));
        Assert.Equal(["1040 lb", "1985 lb", "52 %", "good"], Row(page, "Front left wheel"));
        Assert.Equal("3564 lb", Row(page, "Everything")[0]);
        Assert.Contains("Where the weight sits: 3564 lb", page.Find("#masses-title").TextContent, StringComparison.Ordinal);
        Assert.Equal(["● 2080 lb", "83 % of axle"], page.FindAll(".wide .load")[0].Children.Select(Text));
        Assert.Equal("load pass", page.FindAll(".wide .load")[0].ClassName);
    }

    [Fact]
    public void In_metric_units_the_same_is_told_in_kilograms() => Assert.Equal("943 kg", Row(Page(measure: MeasureSystem.Metric), "Front axle")[0]);

    [Fact]
    public void A_load_without_its_place_is_not_known_and_stands_apart()
    {
        var page = Page("?in=working&load=loaded&against=nothing");
        Assert.Equal("don't know", Row(page, "Front axle")[0]);
        Assert.Equal("3864 lb", Row(page, "Everything")[0]);
        Assert.Equal("No place yet 1", Text(page.Find(".aside details summary")));
        Assert.Empty(page.FindAll($"[data-mass='{Tools}']"));
        Assert.Equal(4, page.FindAll($"[data-mass='{Driver}']").Count); // two views, wide and narrow
    }

    [Fact]
    public void Loads_are_compared_with_another_side()
    {
        Assert.Equal("2080 lb was 2000 lb", Row(Page("?in=working&load=empty"), "Front axle")[0]);
        Assert.Equal("as-found", Page("?in=working&load=empty").Find("#against option[selected]").GetAttribute("value"));
    }

    [Fact]
    public void The_loading_condition_and_the_other_side_stand_in_the_address()
    {
        var page = Page();
        page.Find("#load").Change("loaded");
        Assert.EndsWith("builds/bracken/vehicle?in=working&against=nothing&load=loaded", Nav.Uri, StringComparison.Ordinal);
        page.Find("#against").Change("as-found");
        Assert.EndsWith("&against=as-found&load=loaded", Nav.Uri, StringComparison.Ordinal);
    }

    [Fact]
    public void The_heaviest_condition_is_shown_where_none_is_asked_for() => Assert.Equal("loaded", Page("?in=working").Find("#load option[selected]").GetAttribute("value"));

    [Fact]
    public void Only_what_moved_since_the_weighing_is_drawn_until_more_is_asked_for()
    {
        var page = Page();
        Assert.Equal([Drum], page.FindAll(".wide [data-view=side]").Select(m => m.GetAttribute("data-mass")));
        page.Find(".masses input[type=checkbox]").Change(true);
        Assert.Equal(3, page.FindAll(".wide [data-view=side]").Count);
        Assert.Equal(2, page.FindAll(".wide [data-view=side].standing").Count);
    }

    /// <summary>1500 of 3500 lb on the rear axle of a wheelbase of 100 in, and 64 lb at 25 in ahead: (150000 - 1600) / 3564 = 41.64 in. By hand.</summary>
    [Fact]
    public void The_center_of_gravity_is_told_and_drawn_as_far_as_the_sheet_works_it_out()
    {
        var page = Page();
        var told = page.FindAll("[aria-label='Center of gravity'] div").ToDictionary(d => Text(d.Children[0]), d => Text(d.Children[1]));
        Assert.StartsWith("41.6 in ±", told["Center of gravity behind the front axle"], StringComparison.Ordinal);
        Assert.DoesNotContain(told.Keys, k => k.Contains("datum", StringComparison.Ordinal)); // no axle was raised
        Assert.Single(page.FindAll(".wide .center .center-ring")); // in the plan alone
        Assert.Single(page.FindAll(".wide .center .spread"));
        Assert.NotEmpty(page.FindAll(".loads-table .sure"));
    }

    [Fact]
    public void Where_the_whole_is_not_known_there_is_no_center_of_gravity() => Assert.Empty(Page("?in=working&load=loaded&against=nothing").FindAll(".center"));

    [Fact]
    public void The_page_stands_among_the_places_of_the_build()
    {
        var page = Page();
        Assert.Equal("builds/bracken/vehicle?in=working", page.Find(".places a[aria-current=page]").GetAttribute("href"));
        Assert.Contains(page.FindAll(".choose a"), a => a.GetAttribute("href") == "builds/bracken/vehicle/weighing?in=working&load=empty");
    }

    [Fact]
    public void A_vehicle_that_was_never_weighed_says_what_to_do_first()
    {
        var file = JsonNode.Parse(Json)!;
        (file["id"], file["weighings"]) = ("new", new JsonArray());
        Import(file.ToJsonString());
        var page = Page("?load=empty", id: "new");
        Assert.Contains("not been on a scale yet", page.Find(".empty").TextContent, StringComparison.Ordinal);
        Assert.Contains(page.FindAll(".mass-list .what"), w => Text(w) == "Winch: drum");
    }

    [Fact]
    public void What_somebody_says_elsewhere_shows_at_once()
    {
        var page = Page();
        Desk.Append([Desk.Deciding.Choose("bracken", "working", "winch", "as-found", View.Seen("scenarios/working/choices/winch"), "Ben", "there")], Builds.Journal.Arrival.Online);
        page.WaitForAssertion(() => Assert.Equal("2000 lb", Row(page, "Front axle")[0]));
    }

    [Fact]
    public void A_build_that_is_not_there_is_said_to_be_so() => Assert.Contains("There is no build “nobody”", Page(id: "nobody").Find("h1").TextContent, StringComparison.Ordinal);

    [Fact]
    public void A_caution_stands_where_the_work_can_hurt_someone() => Assert.Contains("weakest part", Page().Find(".caution-line").TextContent, StringComparison.Ordinal);
}
