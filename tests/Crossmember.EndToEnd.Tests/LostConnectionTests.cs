using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossmember.EndToEnd.Tests;

/// <summary>A page whose desk goes away in the middle of a word: it says so, and nothing that was typed is lost.</summary>
public sealed class LostConnectionTests(WebDesk desk)
{
    [Fact]
    public async Task A_line_that_is_cut_and_mended_leaves_what_was_typed_before_and_meanwhile()
    {
        var flatbed = await Flatbed.New().On(desk);
        await using var line = new CutLine(desk.Address);
        var page = await desk.OpenAs("Ana", line.Address + flatbed.Decisions);
        await page.GetByLabel("Value", new() { Exact = true }).SelectOptionAsync("duty.cruise-speed");
        await Type(page, "#new-title", "taller ti");
        await Type(page, "#try-value", "7");

        line.Cut();
        await Expect(page.Locator("#components-reconnect-modal")).ToContainTextAsync("The desk does not answer", new() { UseInnerText = true });
        var barriers = await page.RunAxe();
        Assert.Empty(barriers.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {v.Help}"));
        await Type(page, "#try-value", "5 mph");

        line.Mend();
        await Expect(page.Locator("#components-reconnect-modal")).ToBeHiddenAsync(new() { Timeout = 60_000 });
        await Expect(page.Locator("#new-title")).ToHaveValueAsync("taller ti");
        await Expect(page.Locator("#try-value")).ToHaveValueAsync("75 mph");
        await page.GetByRole(AriaRole.Button, new() { Name = "Try it" }).ClickAsync();
        await Expect(page.Locator(".tried .figure")).ToHaveTextAsync("75 mph");
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task A_desk_that_was_killed_and_started_anew_shows_the_same_page_with_what_was_typed()
    {
        var folder = Directory.CreateTempSubdirectory("crossmember-anew-");
        var flatbed = Flatbed.New();
        SecondDesk.Import(folder.FullName, flatbed.File);
        using var before = new DeskProgram(folder.FullName);
        var address = await before.Address();
        var page = await desk.OpenAs("Ana", new Uri(address, flatbed.Decisions + "?item=tires").ToString());
        await Type(page, "#new-title", "taller ti");
        await Type(page, "#try-value", "75 m");

        await before.Kill();
        await Expect(page.Locator("#components-reconnect-modal")).ToContainTextAsync("The desk does not answer", new() { UseInnerText = true });
        await Type(page, "#approve-by", "the ow");
        using var after = new DeskProgram(folder.FullName, address.Port);
        await after.Address();
        await page.GetByRole(AriaRole.Link, new() { Name = "Show the page again" }).ClickAsync(new() { Timeout = 60_000 });
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "You: Ana" })).ToBeVisibleAsync();
        Assert.Contains("item=tires", page.Url, StringComparison.Ordinal);
        await Expect(page.Locator("#new-title")).ToHaveValueAsync("taller ti");
        await Expect(page.Locator("#try-value")).ToHaveValueAsync("75 m");
        await Expect(page.Locator("#approve-by")).ToHaveValueAsync("the ow");
        await page.Context.DisposeAsync();
        await after.Kill();
        folder.Delete(recursive: true);
    }

    private static async Task Type(IPage page, string field, string words)
    {
        await page.Locator(field).FocusAsync();
        await page.Keyboard.PressAsync("End");
        await page.Keyboard.TypeAsync(words);
    }
}
