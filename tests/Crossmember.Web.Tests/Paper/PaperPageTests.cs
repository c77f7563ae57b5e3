using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Layout;
using Crossmember.Web.Features.Paper;
using Crossmember.Web.Tests.Driveline;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;
using UglyToad.PdfPig;

namespace Crossmember.Web.Tests.Paper;

public sealed class PaperPageTests : BunitContext
{
    private readonly DrivelineShop _shop = new();
    private readonly MadePapers _made = new();

    public PaperPageTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton(_shop.Desk);
        Services.AddSingleton(_made);
        Services.AddSingleton(TimeProvider.System);
        SetRendererInfo(new RendererInfo("Server", true));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        _shop.Dispose();
    }

    private IRenderedComponent<PaperPage> Page(string query = "", MeasureSystem measure = MeasureSystem.UsCustomary, string id = "bracken")
    {
        Services.GetRequiredService<NavigationManager>().NavigateTo($"builds/{id}/paper{query}");
        return Render<PaperPage>(p => p.Add(d => d.Id, id).AddCascadingValue(new Viewer("Ana", "here", measure, true, true)));
    }

    private static void Press(IRenderedComponent<PaperPage> page, string button) => page.FindAll(".choose button").Single(b => b.TextContent == button).Click();

    private MadePaper Fetched(IRenderedComponent<PaperPage> page)
    {
        page.WaitForElement(".done", TimeSpan.FromSeconds(60));
        var address = page.Find(".paper a.button").GetAttribute("href")!;
        Assert.StartsWith("api/papers/", address, StringComparison.Ordinal);
        return _made.Find(Path.GetFileNameWithoutExtension(address))!;
    }

    [Fact]
    public void The_sheet_is_made_and_can_be_saved()
    {
        var page = Page("?in=working");
        Press(page, "Make it");
        var made = Fetched(page);
        Assert.Equal("bracken-sheet.pdf", made.Name);
        using var read = PdfDocument.Open(made.Content);
        Assert.Equal(612, read.GetPage(1).Width); // US units: letter
    }

    [Fact]
    public void Calculation_form_and_paper_can_be_chosen()
    {
        var page = Page("?in=working", MeasureSystem.Metric);
        page.Find("#what").Change("driveline.cruise");
        page.Find("#form").Change(".html");
        page.Find("#paper").Change("letter");
        Press(page, "Make it");
        var made = Fetched(page);
        Assert.Equal("bracken-driveline.cruise.html", made.Name);
        var html = System.Text.Encoding.UTF8.GetString(made.Content);
        Assert.Contains("size: letter", html, StringComparison.Ordinal);
        Assert.Contains("driveline.cruise", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_link_that_names_an_instance_finds_it_chosen()
    {
        var page = Page("?in=working&instance=" + Uri.EscapeDataString("driveline.engine-speed[gear=4,range=high]"));
        Assert.Equal("driveline.engine-speed[gear=4,range=high]", page.Find("#what").GetAttribute("value"));
        Press(page, "Make it");
        Assert.Equal("bracken-driveline.engine-speed[gear=4,range=high].pdf", Fetched(page).Name);
    }

    private void Ben(EntryKind kind, string subject, JsonObject payload)
    {
        var fact = _shop.Desk.Stating.Say("bracken", kind, subject, payload, _shop.Desk.Deciding.LastOn("bracken", subject), new("Ben", "there"));
        Assert.IsType<AppendOutcome.Appended>(_shop.Desk.Append([fact], Arrival.Online)[0]);
    }

    [Fact]
    public void What_is_made_is_the_sheet_as_it_stands_and_not_as_it_was_when_the_page_was_opened()
    {
        var page = Page("?in=working");
        page.Find("#form").Change(".html");
        page.Find("#what").Change("driveline.cruise");
        Ben(EntryKind.WhatIfSet, "scenarios/working/what-ifs/duty.cruise-speed", new JsonObject { ["value"] = "47 mph" });
        Press(page, "Make it");
        Assert.Contains("47 mph", System.Text.Encoding.UTF8.GetString(Fetched(page).Content), StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_be_worked_out_any_more_is_said_and_nothing_else_is_made_in_its_place()
    {
        var page = Page("?in=working&instance=" + Uri.EscapeDataString("driveline.engine-speed[gear=4,range=high]"));
        Ben(EntryKind.OptionStated, "slots/gearbox/options/as-found", new JsonObject { ["title"] = "One gear left", ["class"] = "keep", ["governs"] = new JsonArray("gear.1"), ["parameters"] = new JsonObject { ["gearbox.1.ratio"] = 6.4 } });
        Press(page, "Make it");
        Assert.Contains("not worked out there any more", page.Find("[role=status]").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".done"));
    }

    [Fact]
    public void A_build_that_is_not_there_says_so() => Assert.Contains("There is no build", Page(id: "nobody").Markup, StringComparison.Ordinal);

    [Fact]
    public void Only_the_last_documents_are_kept()
    {
        var first = _made.Keep("a.pdf", Documents.Paper.PaperForm.Pdf, [0]);
        Assert.Same(first, _made.Find(first.Id));
        for (byte i = 1; i <= 12; i++) _made.Keep("b.pdf", Documents.Paper.PaperForm.Pdf, [i]);
        Assert.Null(_made.Find(first.Id));
    }

    [Fact]
    public void Links_lead_to_both_forms_in_the_readers_measures()
    {
        var links = Render<PaperLinks>(p => p.Add(l => l.Build, "a b").Add(l => l.Scenario, "working").Add(l => l.Measure, MeasureSystem.Metric).Add(l => l.Instance, "tires.load[axle=front]")).FindAll("a");
        Assert.Equal("api/builds/a%20b/report/calculation.pdf?in=working&instance=tires.load%5Baxle%3Dfront%5D&measure=metric", links[0].GetAttribute("href"));
        Assert.Equal("api/builds/a%20b/report/calculation.html?in=working&instance=tires.load%5Baxle%3Dfront%5D&measure=metric", links[1].GetAttribute("href"));
        Assert.Equal("builds/a%20b/paper?in=working&instance=tires.load%5Baxle%3Dfront%5D", links[2].GetAttribute("href"));
        Assert.All(links, l => Assert.StartsWith("Print the sheet", l.GetAttribute("aria-label"), StringComparison.Ordinal));
    }
}
