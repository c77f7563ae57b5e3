using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.MasterSheet;

namespace Crossmember.Web.Tests.MasterSheet;

/// <summary>The vehicle is put on the scale.</summary>
public sealed class WeighingTests : SheetPages
{
    private static void Write(IRenderedComponent<SheetPage> page, params (string Place, string Reading)[] readings)
    {
        foreach (var (place, reading) in readings) page.Find($"[id='weigh-{place}']").Input(reading);
        page.Find("#weigh form").Submit();
    }

    /// <summary>1010 + 990 + 1260 + 1240 lb are 4500 lb; the day before it was 3500 lb.</summary>
    [Fact]
    public void Readings_of_each_wheel_make_the_mass_and_are_taken_back_like_any_word()
    {
        var page = Page();
        page.Find("#weigh-date").Change("2026-05-01");
        Write(page, ("front.left", "1010 lb"), ("front.right", "990 lb"), ("rear.left", "1260 lb"), ("rear.right", "1240 lb"));
        Assert.Equal(4500 * 0.45359237, Sheet.Totals.Mass.Kilograms!.Value, 6);
        Assert.Contains("Weighed 2026-05-01", page.Find(".weighing").TextContent, StringComparison.Ordinal);
        Assert.Contains("Ana weighed the vehicle on 2026-05-01", page.Find(".note.said").TextContent, StringComparison.Ordinal);
        page.FindAll(".pick button").Single(b => b.TextContent == "Undo mine").Click();
        Assert.Equal(3500 * 0.45359237, Sheet.Totals.Mass.Kilograms!.Value, 6);
    }

    [Fact]
    public void A_reading_that_is_missing_or_not_understood_is_named_and_the_rest_stays()
    {
        var page = Page();
        page.Find("#weigh-by").Change("axles");
        Write(page, ("front", "2000"));
        var said = page.Find("#weigh-error").TextContent;
        Assert.Contains("Front: ", said, StringComparison.Ordinal);
        Assert.Contains("Rear: nothing is written", said, StringComparison.Ordinal);
        Assert.Equal("true", page.Find("#weigh-front").GetAttribute("aria-invalid"));
        Assert.Equal("2000", page.Find("#weigh-front").GetAttribute("value"));
        Assert.Single(View.Build.Weighings);
    }

    [Fact]
    public void What_was_fitted_on_the_scale_goes_with_the_readings()
    {
        var ticket = new ScaleTicket { Date = "2026-05-01", ByWheel = false, Wheelbase = "100 in", Condition = "empty", Height = " ", DatumHeight = "20 in" };
        ticket.Readings["front"] = "2000 lb";
        ticket.Readings["rear"] = "1500 lb";
        var payload = ticket.Payload(["front", "rear"], new Dictionary<string, string> { ["tires"] = "at33" }, new Faults())!;
        Assert.Equal("""{"date":"2026-05-01","axles":{"front":"2000 lb","rear":"1500 lb"},"wheelbase":"100 in","fitted":{"tires":"at33"},"condition":"empty","datumHeight":"20 in"}""", payload.ToJsonString());
    }

    [Fact]
    public void Where_the_mass_is_missing_a_button_leads_to_the_scale()
    {
        var sheet = DemoShop.Sheet("steading", "working");
        var list = Render<MissingValues>(p => p.Add(m => m.Needed, MissingValues.Of(sheet, new(sheet))).Add(m => m.KeyAddress, l => l.Key).Add(m => m.WeighAddress, "sheet#weigh"));
        Assert.Equal("sheet#weigh", list.FindAll(".needed a").Single(a => a.TextContent == "Write the readings").GetAttribute("href"));
        Assert.Contains(Unsettled.Of(sheet), u => u.What == Unsettled.Mass);
    }
}
