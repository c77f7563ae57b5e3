using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Crossmember.EndToEnd.Tests;

/// <summary>What holds of the desk whatever is on it.</summary>
public sealed class FirstPageTests(WebDesk desk)
{
    /// <summary>WCAG 2.2 as far as axe-core can tell by itself; contrast needs both colour schemes.</summary>
    [Theory]
    [InlineData(1920, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    public async Task The_first_page_has_no_barrier_that_a_machine_can_find(int width, ColorScheme scheme)
    {
        var page = await desk.OpenAs("Ana", "/", width, scheme);
        await Assertions.Expect(page).ToHaveTitleAsync("Builds - Crossmember");
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.Empty(result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {v.Help}"));
        await page.Context.DisposeAsync();
    }

    [Theory]
    [InlineData(1920)]
    [InlineData(768)]
    [InlineData(360)]
    public async Task The_first_page_never_scrolls_sideways(int width)
    {
        var page = await desk.Open("/", width);
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        await page.Context.DisposeAsync();
    }
}
