using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The shop's settings, putting away and erasing, as people do them in the browser.</summary>
/// <remarks>All tests share one desk: each rates a trade of its own, so that none moves another's totals.</remarks>
public sealed class SettingsTests(WebDesk desk)
{
    private static ILocator Button(IPage page, string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    [Fact]
    public async Task A_rate_changed_in_one_browser_moves_the_totals_in_another()
    {
        var trade = $"trimmer-{Guid.NewGuid():N}"[..14];
        var flatbed = await Flatbed.New("\"trade\":\"technician\"", $"\"trade\":\"{trade}\"").On(desk);
        var other = await desk.OpenAs("Ben", flatbed.Decisions + "?item=tires");
        await other.GetByRole(AriaRole.Button, new() { Name = "Choose 33 in all-terrain for Tires" }).ClickAsync();
        await Expect(other.Locator(".note.said")).ToContainTextAsync("33 in all-terrain");
        var page = await desk.OpenAs("Ana", "/settings");
        await Button(page, $"Change the rate of {trade}").ClickAsync();
        await page.GetByLabel($"An hour of {trade}").FillAsync("120");
        await Expect(page.Locator(".preview")).ToContainTextAsync("Moves the totals of 1 of");
        await Button(page, "Keep it").ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync($"Ana rated {trade} at 120.00 USD an hour");
        await Expect(other.Locator(".totals")).ToContainTextAsync("360.00 USD"); // three hours of it
        await Expect(other.Locator(".news")).ToContainTextAsync($"Just now: Ana rated {trade} at 120.00 USD an hour");
        await Button(page, "Undo mine").ClickAsync();
        await Expect(other.Locator(".totals")).Not.ToContainTextAsync("360.00 USD");
        await page.Context.DisposeAsync();
        await other.Context.DisposeAsync();
    }

    [Fact]
    public async Task Units_theme_and_name_are_set_here_and_in_the_head_and_stay()
    {
        var page = await desk.OpenAs("Ana", "/settings");
        await page.GetByLabel("Metric: millimetre, kilogram, litre").CheckAsync();
        await Expect(Button(page, "Metric")).ToBeVisibleAsync();
        await Button(page, "Metric").ClickAsync();
        await Expect(page.GetByLabel("US: inch, pound, gallon")).ToBeCheckedAsync();
        await page.GetByLabel("Dark", new() { Exact = true }).CheckAsync();
        await Expect(page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");
        await Button(page, "Light / dark").ClickAsync();
        await Expect(page.GetByLabel("Light", new() { Exact = true })).ToBeCheckedAsync();
        await page.ReloadAsync();
        await Expect(page.GetByLabel("Light", new() { Exact = true })).ToBeCheckedAsync();
        await page.GetByLabel("As the device has it").CheckAsync();
        Assert.Null(await page.Locator("html").GetAttributeAsync("data-theme"));
        await Expect(Button(page, "You: Ana")).ToBeVisibleAsync();
        await page.Locator("#who").FillAsync("Bea");
        await Button(page, "Keep the name").ClickAsync();
        await Expect(Button(page, "You: Bea")).ToBeVisibleAsync();
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task A_build_is_put_away_found_by_search_and_taken_out_again()
    {
        var flatbed = await Flatbed.New("Bracken flatbed, invented", $"Away {Guid.NewGuid():N}").On(desk);
        var page = await desk.OpenAs("Ana", flatbed.Decisions);
        var title = await page.Locator("h1").InnerTextAsync();
        await page.Locator(".head .put-away summary").ClickAsync();
        await page.GetByLabel("Why, if you like").FillAsync("handed over");
        await Button(page, $"Put it away: {title}").ClickAsync();
        await Expect(page.Locator(".news")).ToContainTextAsync("This build is put away: handed over");
        await page.GotoAsync("/builds");
        await Expect(page.Locator(".build h2", new() { HasText = title })).ToHaveCountAsync(0);
        await page.GotoAsync($"/search?q={Uri.EscapeDataString(title)}");
        await Expect(page.Locator(".hits h2", new() { HasText = title })).ToContainTextAsync("put away");
        await page.GotoAsync("/builds");
        await Expect(Button(page, "You: Ana")).ToBeVisibleAsync();
        // Where nothing else is left the list stands open.
        if (await page.Locator(".away[open]").CountAsync() == 0) await page.Locator(".away > summary").ClickAsync();
        await Button(page, $"Take it out again: {title}").ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync($"{title}: Ana took the build out again");
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task A_customer_is_written_down_handed_out_and_erased_for_good()
    {
        var name = $"Quillon {Guid.NewGuid():N}";
        var flatbed = await Flatbed.New().On(desk);
        var page = await desk.OpenAs("Ana", flatbed.Decisions);
        await page.GetByRole(AriaRole.Link, new() { Name = "Customer", Exact = true }).ClickAsync();
        await Expect(page).ToHaveTitleAsync($"Customer: {flatbed.Title} - Crossmember");
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync(name);
        await Button(page, "Write it down").ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("Kept.");
        using var client = new HttpClient { BaseAddress = desk.Address };
        Assert.Contains(name, await client.GetStringAsync($"/api/builds/{flatbed.Id}/customer.html", TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.DoesNotContain(name, await client.GetStringAsync($"/api/builds/{flatbed.Id}/export", TestContext.Current.CancellationToken), StringComparison.Ordinal);
        await page.GetByRole(AriaRole.Button, new() { Name = "See what goes and what stays" }).ClickAsync();
        await page.GetByLabel("To go on, write the word").FillAsync("erase");
        await Button(page, "Erase it for good").ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("Erased.");
        await Expect(page.GetByLabel("Name", new() { Exact = true })).ToHaveValueAsync("");
        Assert.DoesNotContain(name, await client.GetStringAsync($"/api/builds/{flatbed.Id}/customer.json", TestContext.Current.CancellationToken), StringComparison.Ordinal);
        foreach (var file in Directory.GetFiles(desk.DataFolder, "*", SearchOption.AllDirectories))
        {
            await using var open = File.Open(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            using var copy = new MemoryStream();
            await open.CopyToAsync(copy, TestContext.Current.CancellationToken);
            Assert.True(copy.ToArray().AsSpan().IndexOf(System.Text.Encoding.UTF8.GetBytes(name)) < 0, file);
        }
        await page.Context.DisposeAsync();
    }

    /// <summary>WCAG 2.2 as far as axe-core can tell by itself, with the forms open.</summary>
    [Theory]
    [InlineData(1920, ColorScheme.Light)]
    [InlineData(768, ColorScheme.Dark)]
    [InlineData(360, ColorScheme.Light)]
    public async Task Settings_and_customer_have_no_barrier_that_a_machine_can_find(int width, ColorScheme scheme)
    {
        var flatbed = await Flatbed.New().On(desk);
        var page = await desk.OpenAs("Ana", "/settings", width, scheme);
        await Button(page, "List a part").ClickAsync();
        await page.GetByLabel("What it is").FillAsync($"Plate {width}");
        await page.GetByLabel("Price each").FillAsync("2.85");
        await page.GetByLabel("Price held until").FillAsync("2020-01-31");
        await Button(page, "List the part").ClickAsync();
        await Expect(page.Locator(".stock")).ToContainTextAsync("held until 2020-01-31, over");
        await Button(page, "Change the tax on freight").ClickAsync();
        await page.GetByLabel("Tax on freight, in percent").FillAsync("7,25");
        await Expect(page.Locator("#tax-percent-error")).ToContainTextAsync("no percentage");
        await Sound(page, width, $"settings-{width}");
        await page.GotoAsync($"/builds/{flatbed.Id}/customer");
        await Expect(Button(page, "You: Ana")).ToBeVisibleAsync();
        await page.GetByLabel("Name", new() { Exact = true }).FillAsync("Somebody");
        await Button(page, "Write it down").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "See what goes and what stays" }).ClickAsync();
        await Expect(page.Locator("#erase-word")).ToBeVisibleAsync();
        await page.Locator(".head .put-away summary").ClickAsync();
        await Sound(page, width, $"customer-{width}");
        await page.Context.DisposeAsync();
    }

    private static async Task Sound(IPage page, int width, string name)
    {
        if (Environment.GetEnvironmentVariable("CROSSMEMBER_PICTURES") is { Length: > 0 } folder) await page.ScreenshotAsync(new() { Path = Path.Combine(folder, name + ".png"), FullPage = true });
        var result = await page.RunAxe();
        Assert.Equal("", string.Join("\n", result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id} ({v.Impact}): {v.Help}; {n.Html}"))));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        var small = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('button, select, textarea, input:not([type=checkbox]):not([type=radio]), label:has(input[type=checkbox]), label:has(input[type=radio]), summary, .contents a, .crumb .aside, .button')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
        Assert.Empty(small);
    }
}
