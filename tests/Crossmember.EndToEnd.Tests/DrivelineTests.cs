using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The Driveline page in a browser.</summary>
public sealed class DrivelineTests(WebDesk desk)
{
    private async Task<IPage> Open(int width = 1920, ColorScheme scheme = ColorScheme.Light)
    {
        var flatbed = await Flatbed.New().On(desk);
        return await desk.OpenAs("Ana", $"/builds/{flatbed.Id}/driveline", width, scheme);
    }

    private static ILocator Picture(IPage page, string part) => page.Locator($".curves .{part} svg").First;

    /// <summary>3200 rpm on 28.88 in and 4.10: 66.9 mph in direct by the inch rule with the nominal tire; the loaded one rolls about 3 % less.</summary>
    [Fact]
    public async Task The_curves_can_be_read_as_a_table_and_saved()
    {
        var page = await Open();
        await Assertions.Expect(page).ToHaveTitleAsync(new System.Text.RegularExpressions.Regex("^Driveline: Bracken flatbed"));
        await page.GetByText("The same as a table").First.ClickAsync();
        var highest = page.Locator(".curves").First.Locator("tr.highest td").Last;
        await Assertions.Expect(highest).ToContainTextAsync("3,200 at 65");
        var saved = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "as CSV" }).First.ClickAsync());
        Assert.EndsWith(".csv", saved.SuggestedFilename, StringComparison.Ordinal);
        Assert.StartsWith("curve,build,road speed (mph)", await File.ReadAllTextAsync(await saved.PathAsync(), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task The_range_is_switched_by_keyboard_and_stands_in_the_address()
    {
        var page = await Open();
        await page.GetByRole(AriaRole.Button, new() { Name = "low range" }).FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".curves figcaption").First).ToContainTextAsync("low range");
        Assert.Contains("range=low", page.Url, StringComparison.Ordinal);
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task The_drawing_follows_the_theme()
    {
        var page = await Open();
        Task<string> Ink() => Picture(page, "wide").Locator("text").First.EvaluateAsync<string>("e => getComputedStyle(e).fill");
        var light = await Ink();
        await page.GetByRole(AriaRole.Button, new() { Name = "Light / dark" }).ClickAsync();
        await Assertions.Expect(page.Locator("html")).ToHaveAttributeAsync("data-theme", "dark");
        Assert.NotEqual(light, await Ink());
        await page.Context.DisposeAsync();
    }

    [Theory]
    [InlineData(1920, "wide", "narrow")]
    [InlineData(768, "wide", "narrow")]
    [InlineData(360, "narrow", "wide")]
    public async Task At_every_width_one_drawing_shows_and_nothing_scrolls_sideways(int width, string shown, string hidden)
    {
        var page = await Open(width);
        await Assertions.Expect(Picture(page, shown)).ToBeVisibleAsync();
        await Assertions.Expect(Picture(page, hidden)).ToBeHiddenAsync();
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        await page.Context.DisposeAsync();
    }

    /// <summary>WCAG 2.2 as far as axe-core can tell by itself.</summary>
    [Theory]
    [InlineData(1920, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    public async Task It_has_no_barrier_that_a_machine_can_find(int width, ColorScheme scheme)
    {
        var page = await Open(width, scheme);
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.Empty(result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {v.Help}"));
        await page.Context.DisposeAsync();
    }
}
