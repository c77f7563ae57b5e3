using System.Text;
using System.Text.Json.Nodes;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The Sheet in a browser: what is missing is found, measured, noted, and taken back.</summary>
public sealed class SheetTests(WebDesk desk)
{
    private static int s_next;

    /// <summary>The Packhorse of the demo shop under a fresh id.</summary>
    private async Task<string> Packhorse(string query = "")
    {
        var sheet = JsonNode.Parse(await File.ReadAllTextAsync(RepositoryRoot.Script("data/demo/packhorse.json"), TestContext.Current.CancellationToken))!;
        var id = $"packhorse-{Interlocked.Increment(ref s_next)}";
        sheet["id"] = id;
        await new Flatbed(id, (string)sheet["title"]!, Encoding.UTF8.GetBytes(sheet.ToJsonString())).On(desk);
        return $"/builds/{id}/sheet?in=thrift{query}";
    }

    [Fact]
    public async Task A_missing_value_is_measured_noted_turns_its_check_and_is_taken_back()
    {
        var page = await desk.OpenAs("Ana", await Packhorse());
        await Expect(page.Locator(".wanted")).ToContainTextAsync("Ask whoever built the engine");
        await page.GetByRole(AriaRole.Link, new() { Name = "Note it: highest engine speed to be used" }).ClickAsync();
        await Expect(page.Locator("#note-key")).ToHaveValueAsync("engine.redline");
        await page.Locator("#note-value").FillAsync("3600");
        await page.GetByRole(AriaRole.Button, new() { Name = "Note it", Exact = true }).ClickAsync();
        await Expect(page.Locator("#note-error")).ToContainTextAsync("unit");
        await page.ReloadAsync();
        await Expect(page.Locator("#note-value")).ToHaveValueAsync("3600");
        await page.Locator("#note-value").FillAsync("3600 rpm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Note it", Exact = true }).ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("Ana noted 3600 rpm");
        await Expect(page.Locator(".turns")).ToContainTextAsync("redline");
        await Expect(page.Locator("[data-key-name='engine.redline']")).ToContainTextAsync("measured");

        await page.GetByRole(AriaRole.Button, new() { Name = "Undo mine" }).ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("took back");
        await Expect(page.Locator(".wanted")).ToContainTextAsync("Highest engine speed to be used");
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task The_drawing_is_gone_through_by_arrow_keys_leads_to_the_item_and_is_saved()
    {
        var page = await desk.OpenAs("Ana", await Packhorse());
        var marks = page.Locator(".vehicle .wide a");
        await marks.First.FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(marks.Nth(1)).ToBeFocusedAsync();
        var title = await marks.Nth(1).GetAttributeAsync("aria-label");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("#item-title")).ToHaveTextAsync(title!.Split(' ', 2)[1].Split(':')[0]);
        await page.GoBackAsync();
        var saved = await page.RunAndWaitForDownloadAsync(() => page.GetByRole(AriaRole.Link, new() { Name = "Save the drawing as SVG" }).ClickAsync());
        Assert.EndsWith(".svg", saved.SuggestedFilename, StringComparison.Ordinal);
        Assert.StartsWith("<svg", await File.ReadAllTextAsync(await saved.PathAsync(), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task The_tree_folds_by_keyboard_and_the_slash_searches()
    {
        var page = await desk.OpenAs("Ana", await Packhorse());
        var engine = page.Locator(".sheet-tree a[title=engine]");
        await engine.FocusAsync();
        await page.Keyboard.PressAsync("ArrowLeft");
        await Expect(page.Locator(".sheet-tree a[title='engine.ignition']")).ToHaveCountAsync(0);
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.Locator(".sheet-tree a[title='engine.ignition']")).ToBeVisibleAsync();
        await page.Keyboard.PressAsync("/");
        await page.Keyboard.TypeAsync("ratio");
        await Expect(page.Locator(".values")).ToContainTextAsync("Gearbox ratio in the gear");
        await page.Context.DisposeAsync();
    }

    /// <summary>WCAG 2.2 as far as axe-core can tell by itself.</summary>
    [Theory]
    [InlineData(1920, ColorScheme.Light, "")]
    [InlineData(768, ColorScheme.Dark, "&item=engine")]
    [InlineData(360, ColorScheme.Light, "&item=engine&key=engine.redline")]
    [InlineData(360, ColorScheme.Dark, "")]
    public async Task The_sheet_has_no_barrier_that_a_machine_can_find(int width, ColorScheme scheme, string query)
    {
        var page = await desk.OpenAs("Ana", await Packhorse(query), width, scheme);
        foreach (var summary in await page.Locator(".middle summary:visible").AllAsync()) await summary.ClickAsync();
        var result = await page.RunAxe();
        Assert.Equal("", string.Join("\n", result.Violations.SelectMany(v => v.Nodes.Select(n => $"{v.Id} ({v.Impact}): {v.Help}; {n.Html}"))));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width);
        var small = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('button, select, textarea, input:not([type=checkbox]), label:has(input[type=checkbox]), summary, .items a, .button')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
        Assert.Empty(small);
        await page.Context.DisposeAsync();
    }
}
