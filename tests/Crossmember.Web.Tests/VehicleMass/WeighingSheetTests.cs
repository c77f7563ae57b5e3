using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.VehicleMass;

namespace Crossmember.Web.Tests.VehicleMass;

/// <summary>The sheet that is printed and filled in beside the vehicle.</summary>
public sealed class WeighingSheetTests : VehiclePages
{
    private IRenderedComponent<WeighingSheetPage> Printed(string query = "?in=working&load=loaded", MeasureSystem measure = MeasureSystem.UsCustomary, string id = "bracken")
    {
        Nav.NavigateTo($"builds/{id}/vehicle/weighing{query}");
        return Render<WeighingSheetPage>(p => p.Add(d => d.Id, id).AddCascadingValue(Ana with { Measure = measure }));
    }

    [Fact]
    public void There_is_a_box_for_every_reading()
    {
        var page = Printed();
        Assert.Equal(6, page.FindAll(".weigh-boxes:not(.taped):not(.raised) tbody td").Count); // four wheels, two axles
        Assert.Equal(10, page.FindAll(".weigh-boxes.taped tbody td").Count);                     // wheelbase, radii, datum and track
        Assert.Equal(10, page.FindAll(".weigh-boxes.raised tbody td").Count);                    // two rounds
        Assert.Equal("On the wheels, lb", page.Find("caption").TextContent);
        Assert.Equal("On the wheels, kg", Printed(measure: MeasureSystem.Metric).Find("caption").TextContent);
    }

    [Theory]
    [InlineData("rated for the vehicle")]
    [InlineData("Nobody under it or in it")]
    [InlineData("Brakes off")]
    [InlineData("chocks with a gap")]
    [InlineData("Local rules")]
    public void Cautions_of_the_raised_axle_stand_on_it(string words) => Assert.Contains(words, Printed().Find(".caution-line").TextContent, StringComparison.Ordinal);

    [Fact]
    public void Who_is_aboard_and_what_is_fitted_are_there_to_be_ticked()
    {
        var page = Printed();
        Assert.Equal(["driver", "tools", "nobody and nothing"], page.FindAll(".weigh-aboard li").Select(Text));
        Assert.Equal(["Winch: 8,000 lb"], page.FindAll(".weigh-fitted li").Select(Text));
        Assert.Equal("Fitted today, as in “working”: tick what is", Text(page.Find(".weigh-fitted h2")));
    }

    [Fact]
    public void What_was_approved_is_what_it_is_compared_with()
    {
        Desk.Append([Desk.Deciding.Approve(View.Open, View.Sheet("working"), "the customer", View.Seen("approved"), "Ana", "here", null)], Arrival.Online);
        Desk.Append([Desk.Deciding.Choose("bracken", "working", "tires", "at33", View.Seen("scenarios/working/choices/tires"), "Ana", "here")], Arrival.Online);
        var page = Printed();
        Assert.Equal(["Winch: 8,000 lb"], page.FindAll(".weigh-fitted li").Select(Text));
        Assert.Contains("otherwise than approved", page.Find(".weigh-fitted .hint").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void It_leads_to_where_the_readings_are_written_and_back()
    {
        var links = Printed().FindAll(".weigh-tools a").Select(a => a.GetAttribute("href"));
        Assert.Equal(["builds/bracken/vehicle?in=working", "builds/bracken/sheet?in=working#weigh"], links);
    }

    [Fact]
    public void The_form_for_readings_leads_to_it()
    {
        var form = Render<Features.MasterSheet.WeighForm>(p => p.Add(f => f.Build, View.Build).Add(f => f.Chosen, new Dictionary<string, string>()).Add(f => f.OnWeigh, (_, _) => null));
        Assert.Equal("builds/bracken/vehicle/weighing", form.Find("a").GetAttribute("href"));
    }

    [Fact]
    public void A_build_that_is_not_there_is_said_to_be_so() => Assert.Contains("There is no build “nobody”", Printed(id: "nobody").Find("h1").TextContent, StringComparison.Ordinal);
}
