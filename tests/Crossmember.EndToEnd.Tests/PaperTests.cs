using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Crossmember.EndToEnd.Tests;

/// <summary>Documents in a browser: made on the page, saved, and the page form shown under headers that let nothing in it run.</summary>
public sealed class PaperTests(WebDesk desk)
{
    private async Task<IPage> Open(string at = "paper", int width = 1920, ColorScheme scheme = ColorScheme.Light)
    {
        var flatbed = await Flatbed.New().On(desk);
        return await desk.OpenAs("Ana", $"/builds/{flatbed.Id}/{at}", width, scheme);
    }

    [Fact]
    public async Task A_document_is_made_while_one_watches_and_saved()
    {
        var page = await Open();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make it" }).ClickAsync();
        var link = page.GetByRole(AriaRole.Link, new() { Name = "Save the PDF" });
        await Assertions.Expect(link).ToBeVisibleAsync(new() { Timeout = 60_000 });
        var saved = await page.RunAndWaitForDownloadAsync(() => link.ClickAsync());
        Assert.EndsWith("-sheet.pdf", saved.SuggestedFilename, StringComparison.Ordinal);
        Assert.StartsWith("%PDF-", Encoding.Latin1.GetString(await File.ReadAllBytesAsync(await saved.PathAsync(), TestContext.Current.CancellationToken)), StringComparison.Ordinal);
        await page.Context.DisposeAsync();
    }

    [Theory]
    [InlineData(1920, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    public async Task The_page_form_is_shown_with_its_faces_and_fits_the_screen(int width, ColorScheme scheme)
    {
        var page = await Open("driveline", width, scheme);
        var address = await page.GetByRole(AriaRole.Link, new() { Name = "Pull over road speed as a page" }).GetAttributeAsync("href");
        await page.GotoAsync(new Uri(desk.Address, address!).ToString());
        await Assertions.Expect(page.Locator("h1")).ToHaveTextAsync("Pull over road speed");
        Assert.True(await page.EvaluateAsync<bool>("document.fonts.ready.then(() => document.fonts.check('16px \"Desk Text\"'))"));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        await page.Context.DisposeAsync();
    }

    /// <summary>WCAG 2.2 as far as axe-core can tell by itself.</summary>
    [Theory]
    [InlineData(1920, ColorScheme.Light)]
    [InlineData(360, ColorScheme.Dark)]
    public async Task The_page_that_makes_documents_has_no_barrier_that_a_machine_can_find(int width, ColorScheme scheme)
    {
        var page = await Open("paper", width, scheme);
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.Empty(result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {v.Help}"));
        await page.Context.DisposeAsync();
    }
}
