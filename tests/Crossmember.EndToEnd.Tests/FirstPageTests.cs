using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Crossmember.EndToEnd.Tests;

/// <summary>What holds of the desk whatever is on it.</summary>
public sealed class FirstPageTests(WebDesk desk)
{
    /// <summary>WCAG 2.2 as far as axe-core can tell by itself; contrast needs both colour schemes.</summary>
    [Theory]
    [InlineData("/", "Today", 1920, ColorScheme.Light)]
    [InlineData("/", "Today", 768, ColorScheme.Light)]
    [InlineData("/", "Today", 360, ColorScheme.Dark)]
    [InlineData("/builds", "Builds", 1920, ColorScheme.Light)]
    [InlineData("/builds", "Builds", 360, ColorScheme.Dark)]
    public async Task The_first_pages_have_no_barrier_that_a_machine_can_find(string path, string name, int width, ColorScheme scheme)
    {
        var flatbed = await Flatbed.First().On(desk);
        var page = await desk.OpenAs("Ana", path, width, scheme);
        await Assertions.Expect(page).ToHaveTitleAsync($"{name} - Crossmember");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync(flatbed.Title);
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.Empty(result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {v.Help}"));
        await page.Context.DisposeAsync();
    }

    [Theory]
    [InlineData("/", 1920)]
    [InlineData("/", 768)]
    [InlineData("/", 360)]
    [InlineData("/builds", 360)]
    public async Task The_first_pages_never_scroll_sideways(string path, int width)
    {
        await Flatbed.New().On(desk);
        var page = await desk.Open(path, width);
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task Today_follows_what_somebody_decides_elsewhere_without_being_asked()
    {
        var flatbed = await Flatbed.First().On(desk);
        var (today, decisions) = (await desk.OpenAs("Ana", "/"), await desk.OpenAs("Ben", flatbed.Decisions + "?item=final-drives"));
        var vehicle = today.GetByRole(AriaRole.Listitem).Or(today.GetByRole(AriaRole.Article)).Filter(new() { HasText = flatbed.Title });
        await Assertions.Expect(vehicle.First).Not.ToContainTextAsync("say no");
        await decisions.GetByRole(AriaRole.Button, new() { Name = "Choose 4.88 gears for Final drives" }).ClickAsync();
        await Assertions.Expect(vehicle.First).ToContainTextAsync("1 check says no");
        await vehicle.First.GetByRole(AriaRole.Link, new() { Name = "Look at the options for" }).ClickAsync();
        await Assertions.Expect(today).ToHaveTitleAsync($"Decisions: {flatbed.Title} - Crossmember");
        foreach (var page in new[] { today, decisions }) await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task Single_keys_lead_to_the_places_of_the_shop()
    {
        var page = await desk.OpenAs("Ana", "/settings");
        foreach (var (key, title) in new[] { ("b", "Builds"), ("c", "Bench"), ("t", "Today"), ("/", "Search") })
        {
            await page.Keyboard.PressAsync(key);
            await Assertions.Expect(page).ToHaveTitleAsync($"{title} - Crossmember");
            // The page is drawn before its scripts listen.
            await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = "You: Ana" })).ToBeVisibleAsync();
        }
        await page.Context.DisposeAsync();
    }
}
