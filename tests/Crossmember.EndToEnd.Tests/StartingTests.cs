using System.Globalization;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossmember.EndToEnd.Tests;

/// <summary>Somebody with an empty shop and a vehicle of their own.</summary>
public sealed class StartingTests(WebDesk desk)
{
    private static int s_next;

    private static string NewTitle() => $"Moorland pickup {Interlocked.Increment(ref s_next).ToString(CultureInfo.InvariantCulture)}";

    private static async Task Make(IPage page, string title)
    {
        await page.GetByLabel("What the vehicle is called").FillAsync(title);
        await page.GetByRole(AriaRole.Radio, new() { Name = "Pickup with a long wheelbase" }).CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Make the build" }).ClickAsync();
        await Expect(page).ToHaveTitleAsync($"Decisions: {title} - Crossmember");
    }

    [Fact]
    public async Task From_an_empty_shop_to_a_choice_of_ones_own_and_back()
    {
        var data = Directory.CreateTempSubdirectory("crossmember-empty-");
        using var program = new DeskProgram(data.FullName);
        var page = await desk.OpenAs("Ana", (await program.Address()).ToString());
        await page.GetByRole(AriaRole.Link, new() { Name = "New build" }).ClickAsync();
        await Make(page, "Moorland pickup");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What is next" })).ToBeVisibleAsync();

        await page.GetByText("Add items", new() { Exact = true }).ClickAsync();
        await page.GetByLabel("Name", new() { Exact = true }).First.FillAsync("Roof rack");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the item" }).ClickAsync();
        await Expect(page.Locator("#item-title")).ToHaveTextAsync("Roof rack");

        await page.GetByRole(AriaRole.Button, new() { Name = "New option", Exact = true }).ClickAsync();
        var form = page.Locator(".option-form");
        await form.GetByLabel("Name").FillAsync("Made of round tube");
        await form.GetByLabel("Price").FillAsync("46 USD each, 6");
        await form.Locator("#of-trade-0").FillAsync("fabricator");
        await form.Locator("#of-figure-0").FillAsync("12");
        await Expect(form.Locator("#of-hours-hint-0")).ToContainTextAsync("12 h as a guess counts as 14.3 h");
        await form.GetByRole(AriaRole.Button, new() { Name = "Add the option" }).ClickAsync();
        await Expect(form).ToHaveCountAsync(0);

        await page.GetByRole(AriaRole.Button, new() { Name = "Choose Made of round tube for Roof rack" }).ClickAsync();
        await Expect(page.Locator(".totals")).ToContainTextAsync("276.00 USD");
        await Expect(page.Locator(".totals")).ToContainTextAsync("14.3 h");
        var undo = page.GetByRole(AriaRole.Button, new() { Name = "Undo mine" });
        await undo.ClickAsync();
        await Expect(page.Locator(".totals")).Not.ToContainTextAsync("276.00 USD");
        await undo.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Article, new() { Name = "Made of round tube" })).ToHaveCountAsync(0);
        await page.Context.DisposeAsync();
        await program.Kill();
        data.Delete(recursive: true);
    }

    /// <summary>Five items of a template and what could be done about each, a price and a figure of hours: 5 x 310 + 1240 + 96 + 380 + 1150 = 4416, by hand.</summary>
    [Fact]
    public async Task Five_items_with_an_option_each_are_said_in_a_few_words()
    {
        (string Item, string Option, string Price, string Hours)[] said =
        [
            ("tires", "33 in all-terrain", "310 USD each, 5", "3"), ("gearbox", "Rebuilt four-speed", "1240", "9"), ("axle.front.brakes", "New shoes and cylinders", "96", "5"),
            ("cooling", "Recored radiator", "380", "2.5"), ("harness", "New harness", "1150", "40"),
        ];
        // A shop of its own: taxes that others set would be in the sum.
        var data = Directory.CreateTempSubdirectory("crossmember-five-");
        using var program = new DeskProgram(data.FullName);
        var page = await desk.OpenAs("Ana", $"{await program.Address()}builds/new");
        await Make(page, NewTitle());
        foreach (var (item, option, price, hours) in said)
        {
            await page.Locator($".items a[title='{item}']").ClickAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "New option", Exact = true }).ClickAsync();
            await page.Locator("#of-title").FillAsync(option);
            await page.Locator("#of-price").FillAsync(price);
            await page.Locator("#of-figure-0").FillAsync(hours);
            await page.GetByRole(AriaRole.Button, new() { Name = "Add the option" }).ClickAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = $"Choose {option} for" }).ClickAsync();
            await Expect(page.Locator(".note.said")).ToContainTextAsync(option);
        }
        await Expect(page.Locator(".totals")).ToContainTextAsync("4,416.00 USD");
        await Picture(page, "five-items");
        await page.Context.DisposeAsync();
        await program.Kill();
        data.Delete(recursive: true);
    }

    [Fact]
    public async Task What_is_half_typed_survives_a_reload()
    {
        var page = await desk.OpenAs("Ana", "/builds/new");
        await page.GetByLabel("What the vehicle is called").FillAsync("Half a name");
        await page.ReloadAsync();
        await Expect(page.GetByLabel("What the vehicle is called")).ToHaveValueAsync("Half a name");
        await page.Context.DisposeAsync();
    }

    /// <summary>A thousand rows are more than one message of the line holds.</summary>
    [Fact]
    public async Task A_list_is_pasted_looked_at_taken_in_and_taken_back()
    {
        var page = await desk.OpenAs("Ana", "/builds/new");
        await Make(page, NewTitle());
        await page.GetByText("Add items", new() { Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Paste a parts list" }).ClickAsync();
        var list = "Part\tQty\tUnit price (USD)\tFor\nBrake hose\t2\t18.50\tFront brakes\nWheel cylinder\ttwo\t31\tRear brakes\n"
            + string.Concat(Enumerable.Range(1, 1000).Select(n => $"Bolt of the bag with the number {n}\t4\t0.35\t\n"));
        await page.Locator("#paste-text").FillAsync(list);
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the list" }).ClickAsync();
        await Expect(page.Locator(".paste")).ToContainTextAsync("1002 rows: 1001 ready, 1 needs a look");
        await Expect(page.GetByLabel("Where Brake hose goes")).ToHaveValueAsync("item:axle.front.brakes");
        await page.GetByRole(AriaRole.Button, new() { Name = "Take in 1001 parts" }).ClickAsync();
        await Expect(page.Locator(".paste")).ToContainTextAsync("1001 parts are in", new() { Timeout = 60_000 });
        await Expect(page.Locator("#paste-text")).ToHaveValueAsync("Part\tQty\tUnit price (USD)\tFor\nWheel cylinder\ttwo\t31\tRear brakes\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo mine" }).ClickAsync();
        await Expect(page.Locator(".news")).ToContainTextAsync("took back", new() { Timeout = 60_000 });
        await page.Context.DisposeAsync();
    }

    /// <summary>WCAG 2.2 as far as axe-core can tell by itself.</summary>
    [Theory]
    [InlineData(1920, ColorScheme.Light)]
    [InlineData(768, ColorScheme.Dark)]
    [InlineData(360, ColorScheme.Light)]
    public async Task The_pages_have_no_barrier_that_a_machine_can_find(int width, ColorScheme scheme)
    {
        var page = await desk.OpenAs("Ana", "/builds/new", width, scheme);
        await NoBarrier(page, width, "new-build");
        await Make(page, NewTitle());
        await NoBarrier(page, width, "decisions");
        await page.GotoAsync(page.Url.Split('?')[0] + "?item=tires");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "You: Ana" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "New option", Exact = true }).ClickAsync();
        await page.GetByText("Starts from, original, lead time, mass, values").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Another value" }).ClickAsync();
        await page.GetByLabel("Price").FillAsync("cheap");
        await page.GetByRole(AriaRole.Button, new() { Name = "Add the option" }).ClickAsync();
        await Expect(page.Locator("#of-price-error")).ToContainTextAsync("no amount");
        await NoBarrier(page, width, "option");
        await page.GotoAsync(page.Url.Split("/decisions")[0] + "/paste");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "You: Ana" })).ToBeVisibleAsync();
        await page.Locator("#paste-text").FillAsync("Part;Qty;Price;Weight\nTires, 33 in;5;310,00;28,1\nHose;two;18,50;0,4\nRack;1;410,00;30\n");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the list" }).ClickAsync();
        await Expect(page.Locator(".preview")).ToContainTextAsync("needs a look");
        await NoBarrier(page, width, "paste");
        await page.Context.DisposeAsync();
    }

    /// <summary>For whoever wants to look at the pages: pictures of them in a folder.</summary>
    private static async Task Picture(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("CROSSMEMBER_PICTURES") is { Length: > 0 } folder) await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}.png"), FullPage = true });
    }

    private static async Task NoBarrier(IPage page, int width, string name)
    {
        await Picture(page, $"{name}-{width}");
        var result = await page.RunAxe();
        Assert.Equal("", string.Join("\n", result.Violations.SelectMany(v => v.Nodes.Select(n => $"{name}: {v.Id} ({v.Impact}): {v.Help}; {n.Html}"))));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, name);
        var small = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('main button, main select, main input:not([type=checkbox]):not([type=radio]), main label:has(input[type=checkbox]), main summary, main .button')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
        Assert.Empty(small);
    }
}
