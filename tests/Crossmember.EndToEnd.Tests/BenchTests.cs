using System.Text.Json.Nodes;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The bench in a real browser: by itself, with the values of a build, and from there into a what-if.</summary>
public sealed class BenchTests(WebDesk desk) : IDisposable
{
    private const string Speed = "driveline.engine-speed";

    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-bench-");

    public void Dispose() => _data.Delete(recursive: true);

    /// <summary>What the command line makes of the inputs that a card hands on.</summary>
    private async Task<double> OnTheCommandLine(string input)
    {
        var file = Path.Combine(_data.FullName, "input.json");
        await File.WriteAllTextAsync(file, input, TestContext.Current.CancellationToken);
        return JsonNode.Parse(await CrossmemberScript.Run("calc", "run", Speed, file, "--json"))!["outputs"]!["engineSpeed"]!["value"]!.GetValue<double>();
    }

    private static ILocator Answer(IPage page) => page.Locator("[data-output='engineSpeed'] data");

    private static async Task<double> Number(IPage page) => double.Parse((await Answer(page).GetAttributeAsync("value"))!, System.Globalization.CultureInfo.InvariantCulture);

    private static string InputOf(string address) => System.Web.HttpUtility.ParseQueryString(new Uri(address).Query)["input"]!;

    private static async Task<IPage> Typed(IPage page, params (string Label, string Text)[] fields)
    {
        foreach (var (label, text) in fields) await page.GetByLabel(label, new() { Exact = true }).FillAsync(text);
        await page.Keyboard.PressAsync("Tab");
        return page;
    }

    [Fact]
    public async Task What_rpm_at_65_with_33s_and_456_is_found_without_a_build_and_can_be_sent()
    {
        var page = await desk.OpenAs("Ana", "/");
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Places" }).GetByRole(AriaRole.Link, new() { Name = "Bench" }).ClickAsync();
        await page.GetByRole(AriaRole.Searchbox).FillAsync("rpm road");
        await Expect(page.Locator("[data-calculation='tires.load']")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Link, new() { Name = "Engine speed at a road speed" }).ClickAsync();
        await Typed(page, ("Road speed", "65"), ("Overall tire diameter", "33"), ("Axle ratio", "4.56"), ("Gearbox ratio in this gear", "1"));
        await Expect(Answer(page)).ToContainTextAsync("3019.1 rpm");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("input="));
        Assert.Equal(await OnTheCommandLine(InputOf(page.Url)), await Number(page));
        var other = await desk.OpenAs("Ben", page.Url);
        await Expect(Answer(other)).ToContainTextAsync("3019.1 rpm");
        await Expect(other.GetByLabel("Road speed", new() { Exact = true })).ToHaveValueAsync("65 mph");
        await page.Context.DisposeAsync();
        await other.Context.DisposeAsync();
    }

    [Fact]
    public async Task Nothing_typed_is_lost_by_a_reload_and_a_fault_stands_beside_its_field()
    {
        var page = await desk.OpenAs("Ana", $"/bench/{Speed}");
        await page.GetByLabel("Axle ratio", new() { Exact = true }).PressSequentiallyAsync("4,5");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator("#in-axleRatio-fault")).ToContainTextAsync("write 4.5, not 4,5");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("input="));
        await page.ReloadAsync();
        await Expect(page.GetByLabel("Axle ratio", new() { Exact = true })).ToHaveValueAsync("4,5");
        // Without the address the browser still knows.
        await page.GotoAsync($"/bench/{Speed}");
        await Expect(page.GetByLabel("Axle ratio", new() { Exact = true })).ToHaveValueAsync("4,5");
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task A_value_tried_on_the_Packhorse_becomes_a_what_if_that_stands_on_Decisions()
    {
        var demo = Path.Combine(_data.FullName, "demo");
        await CrossmemberScript.Run("demo", "--out", demo);
        var records = Path.Combine(_data.FullName, "records");
        await CrossmemberScript.Run("import", Path.Combine(demo, "packhorse.json"), "--data", records);
        using var program = new DeskProgram(records);
        var page = await desk.OpenAs("Ana", new Uri(await program.Address(), "builds/packhorse/decisions").ToString());
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Pages of this build" }).GetByRole(AriaRole.Link, new() { Name = "Bench" }).ClickAsync();
        await page.GetByRole(AriaRole.Searchbox).FillAsync("engine speed at a road");
        await page.GetByRole(AriaRole.Link, new() { Name = "Engine speed at a road speed" }).ClickAsync();
        await page.GetByLabel("For", new() { Exact = true }).SelectOptionAsync("gear 4, high range");
        await Expect(page.Locator("[data-input='gearRatio'] .stands .figure")).ToHaveTextAsync("1");
        var before = await Number(page);
        await page.GetByLabel("Try instead: road speed").FillAsync("70");
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(".answer .was")).ToContainTextAsync("in the build");
        Assert.Equal(before * 70 / 60, await Number(page), 6);
        var everything = await page.GetByRole(AriaRole.Link, new() { Name = "With these values, without the build" }).EvaluateAsync<string>("a => a.href");
        Assert.Equal(await OnTheCommandLine(InputOf(everything)), await Number(page));
        await page.GetByRole(AriaRole.Button, new() { Name = "Use as what-if: road speed" }).ClickAsync();
        await Expect(page.Locator(".note.said")).ToContainTextAsync("Ana tried 70 mph for “speed the vehicle is to cruise at”");
        await Expect(page.Locator("[data-input='roadSpeed'] .stands")).ToContainTextAsync("70 mph");
        await page.GetByRole(AriaRole.Link, new() { Name = "See what it changes elsewhere" }).ClickAsync();
        await Expect(page.Locator(".tried")).ToContainTextAsync("70 mph");
        await page.Context.DisposeAsync();
        await program.Kill();
    }

    [Fact]
    public async Task A_check_on_Decisions_leads_to_its_working()
    {
        var flatbed = await Flatbed.New().On(desk);
        var page = await desk.OpenAs("Ana", flatbed.Decisions);
        await page.GetByRole(AriaRole.Group).Filter(new() { HasText = "know yet" }).Locator("summary").ClickAsync();
        await page.GetByRole(AriaRole.Link, new() { Name = "Working: " }).First.ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Not known yet" })).ToBeVisibleAsync();
        Assert.Contains($"/builds/{flatbed.Id}/bench/", page.Url, StringComparison.Ordinal);
        await page.Context.DisposeAsync();
    }

    /// <summary>WCAG 2.2 as far as axe-core can tell by itself.</summary>
    [Theory]
    [InlineData(1920, ColorScheme.Light)]
    [InlineData(768, ColorScheme.Dark)]
    [InlineData(360, ColorScheme.Light)]
    public async Task The_bench_has_no_barrier_that_a_machine_can_find(int width, ColorScheme scheme)
    {
        var flatbed = await Flatbed.New().On(desk);
        string[] pages =
        [
            "/bench", "/bench/driveline.tractive-effort", $"/bench/{Speed}?input=%7B%22roadSpeed%22%3A%22fast%22%7D", $"/builds/{flatbed.Id}/bench",
            $"/builds/{flatbed.Id}/bench/driveline.speed-curves?input=%7B%22axleRatio%22%3A%225%22%2C%22gearRatios%22%3A%7B%221%22%3A%227%22%7D%7D",
        ];
        foreach (var path in pages)
        {
            var page = await desk.OpenAs("Ana", path, width, scheme);
            var result = await page.RunAxe();
            Assert.NotEmpty(result.Passes);
            var barriers = string.Join("\n", result.Violations.SelectMany(v => v.Nodes.Select(n => $"{path}: {v.Id} ({v.Impact}): {v.Help}; {n.Html}")));
            Assert.True(barriers.Length == 0, barriers);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, $"{path} scrolls sideways");
            var small = await page.EvaluateAsync<string[]>("[...document.querySelectorAll('main button, main select, main input, main textarea, main summary, main .button, .benches a, .unused a, .with a')].filter(e => e.offsetParent && e.getBoundingClientRect().height < 43.5).map(e => e.outerHTML)");
            Assert.Empty(small);
            await page.Context.DisposeAsync();
        }
    }
}
