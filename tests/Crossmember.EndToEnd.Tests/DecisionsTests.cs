using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Ripples;
using Crossmember.Engineering.Reading;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossmember.EndToEnd.Tests;

/// <summary>Deciding, as a person at the desk does it.</summary>
public sealed class DecisionsTests(WebDesk desk)
{
    [Fact]
    public async Task A_file_is_imported_looked_at_decided_approved_and_exported()
    {
        var flatbed = Flatbed.New();
        var page = await desk.OpenAs("Ana", "/builds");
        await Expect(page.Locator("#build-file")).ToBeEnabledAsync();
        await page.SetInputFilesAsync("#build-file", new FilePayload { Name = "flatbed.json", MimeType = "application/json", Buffer = flatbed.File });
        await page.GetByRole(AriaRole.Link, new() { Name = "Open its decisions" }).ClickAsync();
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Items" }).GetByRole(AriaRole.Link, new() { Name = "Final drives" }).ClickAsync();
        var card = page.GetByRole(AriaRole.Article, new() { Name = "4.88 gears" });
        await card.HoverAsync();
        await Expect(page.Locator("#knock")).ToContainTextAsync("Nothing is written yet");
        await ShowsTheNumbersOfTheLibrary(page, flatbed, "short");

        await card.GetByRole(AriaRole.Button, new() { Name = "Choose 4.88 gears for Final drives" }).ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("Ana chose “4.88 gears” for Final drives");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo mine" }).ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("took back");
        await page.GetByRole(AriaRole.Button, new() { Name = "Choose 3.73 gears for Final drives" }).ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("3.73 gears");
        await page.GetByLabel("Who said yes").FillAsync("the owner");
        await page.GetByRole(AriaRole.Button, new() { Name = "Approve “working”" }).ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("the owner said yes");
        await page.GetByRole(AriaRole.Button, new() { Name = "Compare two instead" }).ClickAsync();
        await page.GetByLabel("From", new() { Exact = true }).SelectOptionAsync("approved@");
        await Expect(page.Locator("#knock")).ToContainTextAsync("Nothing changes");
        await ComesBackByteForByte(flatbed.Id);
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task A_tried_value_shows_its_error_beside_the_field_survives_a_reload_and_stops_the_yes()
    {
        var flatbed = await Flatbed.New().On(desk);
        var page = await desk.OpenAs("Ana", flatbed.Decisions);
        await page.GetByLabel("Value", new() { Exact = true }).SelectOptionAsync("duty.cruise-speed");
        await page.GetByLabel("Try instead").FillAsync("75");
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it" }).ClickAsync();
        await Expect(page.Locator("#try-error")).ToContainTextAsync("unit");
        await page.ReloadAsync();
        await Expect(page.GetByLabel("Try instead")).ToHaveValueAsync("75");
        await page.GetByLabel("Value", new() { Exact = true }).SelectOptionAsync("duty.cruise-speed");
        await page.GetByLabel("Try instead").FillAsync("75 mph");
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it" }).ClickAsync();
        await Expect(page.Locator(".obstacle")).ToContainTextAsync("1 tried value is still in it");
        await Expect(page.Locator("#knock .flips")).ToContainTextAsync("redline");
        await page.GetByRole(AriaRole.Button, new() { Name = "Drop the tried value" }).ClickAsync();
        await Expect(page.GetByLabel("Who said yes")).ToBeVisibleAsync();
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task Two_people_on_one_choice_see_both_and_pick()
    {
        var flatbed = await Flatbed.New().On(desk);
        var address = flatbed.Decisions + "?item=final-drives";
        IPage ana = await desk.OpenAs("Ana", address), ben = await desk.OpenAs("Ben", address);
        await Expect(ben.GetByRole(AriaRole.Button, new() { Name = "You: Ben" })).ToBeVisibleAsync();
        await ana.GetByRole(AriaRole.Button, new() { Name = "Choose 3.73 gears for Final drives" }).ClickAsync();
        await Expect(ana.Locator(".note.said")).ToContainTextAsync("3.73 gears");
        await Expect(ben.Locator(".news")).ToContainTextAsync("Somebody has decided what you are looking at");
        await ben.GetByRole(AriaRole.Button, new() { Name = "Choose 4.88 gears for Final drives" }).ClickAsync();
        var clash = ben.GetByRole(AriaRole.Alertdialog);
        await Expect(clash).ToContainTextAsync("Ana chose “3.73 gears”");
        await Expect(clash).ToContainTextAsync("Ben chose “4.88 gears”");
        await clash.GetByRole(AriaRole.Button, new() { Name = "Use mine" }).ClickAsync();
        await Expect(ben.Locator(".note.said")).ToContainTextAsync("4.88 gears");
        await Expect(ben.Locator(".history li")).ToHaveCountAsync(2);
        await ana.Context.DisposeAsync();
        await ben.Context.DisposeAsync();
    }

    [Fact]
    public async Task Everything_can_be_reached_and_seen_by_keyboard_alone()
    {
        var flatbed = await Flatbed.New().On(desk);
        var page = await desk.OpenAs("Ana", flatbed.Decisions + "?item=tires");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".skip")).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("/");
        await Expect(page.GetByRole(AriaRole.Searchbox)).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("drives");
        await Expect(page.Locator(".items li")).ToHaveCountAsync(2);
        await page.GetByRole(AriaRole.Button, new() { Name = "Choose 33 in all-terrain for Tires" }).FocusAsync();
        await Expect(page.Locator("#knock")).ToContainTextAsync("If 33 in all-terrain is chosen for Tires");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".note.said")).ToContainTextAsync("33 in all-terrain");
        await page.Context.DisposeAsync();
    }

    /// <summary>WCAG 2.2 as far as axe-core can tell by itself.</summary>
    [Theory]
    [InlineData(1920, ColorScheme.Light)]
    [InlineData(768, ColorScheme.Dark)]
    [InlineData(360, ColorScheme.Light)]
    public async Task Decisions_have_no_barrier_that_a_machine_can_find(int width, ColorScheme scheme)
    {
        var flatbed = await Flatbed.New().On(desk);
        var page = await desk.OpenAs("Ana", flatbed.Decisions + "?item=tires", width, scheme);
        await page.GetByRole(AriaRole.Button, new() { Name = "Look at 33 in all-terrain" }).ClickAsync();
        await Expect(page.Locator("#knock")).ToContainTextAsync("Nothing is written yet");
        await page.GetByRole(AriaRole.Article, new() { Name = "Leave off" }).HoverAsync();
        await Expect(page.Locator("#knock")).ToContainTextAsync("If 33 in all-terrain is chosen");
        var result = await page.RunAxe();
        Assert.Equal("", string.Join("\n", result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id} ({v.Impact}): {v.Help}; {n.Html}"))));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        var small = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('button, select, input:not([type=checkbox]), label:has(input[type=checkbox]), summary, .items a, .button')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
        Assert.Empty(small);
        await page.Context.DisposeAsync();
    }

    private static async Task ShowsTheNumbersOfTheLibrary(IPage page, Flatbed flatbed, string option)
    {
        var file = BuildFile.Read(flatbed.File, Catalogue.Shipped, new Faults())!.Sheet!;
        var plan = new EvaluationPlan(Catalogue.Shipped, file.Build);
        var working = file.Build.Scenarios["working"];
        var changed = working with { Choices = working.Choices.SetItem("final-drives", option) };
        var rows = RippleJson.Of(Ripple.Between(plan.Evaluate(file.Build, file.Shop, working), plan.Evaluate(file.Build, file.Shop, changed)))["rows"]!.AsArray();
        await Expect(page.Locator(".ripple")).ToHaveAttributeAsync("data-rows", rows.Count.ToString(CultureInfo.InvariantCulture));
        var shown = await page.Locator("tr[data-ids]").EvaluateAllAsync<string[]>(
            "rows => rows.flatMap(r => r.dataset.ids.split(' ').map(id => `${id}|${r.querySelector('.from data').getAttribute('value')}|${r.querySelector('.to data').getAttribute('value')}`))");
        var flips = await page.Locator(".flips li").EvaluateAllAsync<string[]>("rows => rows.flatMap(r => r.dataset.ids.split(' '))");
        var written = rows.Where(r => !flips.Contains(r!["id"]!.GetValue<string>())).Select(r => $"{r!["id"]}|{Number(r["from"])}|{Number(r["to"])}");
        Assert.Equal(written.Order(StringComparer.Ordinal), shown.Select(Normal).Order(StringComparer.Ordinal));
        Assert.Equal(["driveline.cruise/redline"], flips);
    }

    private static string Number(JsonNode? side) => side?["value"] is JsonValue v && v.TryGetValue<double>(out var n) ? n.ToString("R", CultureInfo.InvariantCulture) : side?["value"]?.ToString() ?? "null";

    private static string Normal(string shown) => string.Join('|', shown.Split('|').Select(p => double.TryParse(p, CultureInfo.InvariantCulture, out var n) ? n.ToString("R", CultureInfo.InvariantCulture) : p));

    private async Task ComesBackByteForByte(string id)
    {
        using var client = new HttpClient { BaseAddress = desk.Address };
        var file = await client.GetByteArrayAsync($"/api/builds/{id}/export", TestContext.Current.CancellationToken);
        using var elsewhere = new SecondDesk();
        Assert.Equal(file, elsewhere.ImportedAndExported(file, id));
    }
}
