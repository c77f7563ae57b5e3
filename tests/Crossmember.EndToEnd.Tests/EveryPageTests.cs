using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Crossmember.EndToEnd.Tests;

/// <summary>What holds of every page, whatever is done on it: no barrier, no sideways scrolling, the whole of it by keyboard, clean on paper.</summary>
public sealed class EveryPageTests(WebDesk desk)
{
    /// <summary>Addresses, with the build's in braces.</summary>
    private static readonly string[] s_pages =
    [
        "/", "/builds", "/builds/new", "/search?q=tire", "/bench", "/bench/driveline.engine-speed", "/settings", "{build}/sheet", "{build}/sheet?item=tires", "{build}/decisions", "{build}/decisions?item=tires",
        "{build}/driveline", "{build}/vehicle", "{build}/vehicle/weighing", "{build}/vehicle/tipping", "{build}/vehicle/steering", "{build}/brakes", "{build}/brakes/balance", "{build}/brakes/failures", "{build}/brakes/gauge-sheet", "{build}/bench", "{build}/bench/driveline.cruise", "{build}/customer", "{build}/paste", "{build}/paper",
    ];

    /// <summary>Everything that can be pressed, followed or filled in, and is there to be seen. A list that arrows go through is one stop of Tab, and so is a group of radio buttons.</summary>
    private const string Stops = """
        () => {
          const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, [tabindex="0"]')]
            .filter(e => !e.disabled && e.tabIndex >= 0 && e.type !== 'hidden' && e.checkVisibility({ visibilityProperty: true }) && !e.closest('[inert]'));
          const groups = new Set();
          return all.filter(e => {
            const group = e.closest('[data-arrows]') ?? (e.type === 'radio' ? 'radio ' + e.name : null);
            if (group === null) return true;
            if (groups.has(group)) return false;
            groups.add(group);
            return true;
          }).length;
        }
        """;

    private const string Focused = """
        () => {
          window.stops ??= new Set();
          const e = document.activeElement;
          if (!e || e === document.body) return -1;
          window.stops.add(e.closest('[data-arrows]') ?? (e.type === 'radio' ? 'radio ' + e.name : e));
          return window.stops.size;
        }
        """;

    public static TheoryData<string> Pages => [.. s_pages];

    public static TheoryData<string, int, ColorScheme> Looks
    {
        get
        {
            var looks = new TheoryData<string, int, ColorScheme>();
            foreach (var page in s_pages)
                foreach (var (width, scheme) in new[] { (1920, ColorScheme.Light), (768, ColorScheme.Dark), (360, ColorScheme.Light) }) looks.Add(page, width, scheme);
            return looks;
        }
    }

    [Theory]
    [MemberData(nameof(Looks))]
    public async Task No_page_has_a_barrier_that_a_machine_can_find_or_scrolls_sideways(string path, int width, ColorScheme scheme)
    {
        var page = await Open(path, width, scheme);
        Assert.Equal(1, await page.Locator("h1").CountAsync());
        Assert.NotEmpty(await page.TitleAsync());
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, "it scrolls sideways");
        var result = await page.RunAxe();
        Assert.NotEmpty(result.Passes);
        Assert.Empty(result.Violations.Where(v => v.Impact is "serious" or "critical").Select(v => $"{v.Id}: {v.Help}: {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}"));
        await page.Context.DisposeAsync();
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public async Task Everything_on_a_page_is_reached_by_the_keyboard(string path)
    {
        var page = await Open(path);
        var stops = await page.EvaluateAsync<int>(Stops);
        Assert.InRange(stops, 5, 2000);
        var reached = 0;
        for (var i = 0; i < stops + 20 && reached < stops; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            reached = Math.Max(reached, await page.EvaluateAsync<int>(Focused));
        }
        Assert.Equal(stops, reached);
        await page.Context.DisposeAsync();
    }

    /// <summary>On paper nothing can be pressed, and ink is dark on white.</summary>
    [Theory]
    [MemberData(nameof(Pages))]
    public async Task A_page_prints_what_it_says_and_nothing_that_can_only_be_pressed(string path)
    {
        var page = await Open(path, 1280, ColorScheme.Dark);
        var title = await page.Locator("h1").InnerTextAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        Assert.Equal(0, await page.Locator("main button:visible, .top:visible, input[type=file]:visible").CountAsync());
        Assert.Equal("rgb(34, 40, 43)", await page.EvaluateAsync<string>("getComputedStyle(document.querySelector('h1')).color"));
        var paper = await page.PdfAsync(new() { Format = "A4" });
        using var document = UglyToad.PdfPig.PdfDocument.Open(paper);
        Assert.InRange(document.NumberOfPages, 1, 40);
        Assert.Contains(Letters(title), Letters(string.Concat(document.GetPages().Select(p => p.Text))), StringComparison.Ordinal);
        await page.Context.DisposeAsync();
    }

    private static string Letters(string text) => new([.. text.Where(char.IsLetterOrDigit)]);

    // Looked at and never written on: one will do for all.
    private static readonly SemaphoreSlim s_one = new(1);
    private static Flatbed? s_flatbed;

    private async Task<Flatbed> Looked()
    {
        await s_one.WaitAsync(TestContext.Current.CancellationToken);
        try { return s_flatbed ??= await Flatbed.New().On(desk); }
        finally { s_one.Release(); }
    }

    private async Task<IPage> Open(string path, int width = 1280, ColorScheme scheme = ColorScheme.Light)
    {
        var flatbed = await Looked();
        return await desk.OpenAs("Ana", path.Replace("{build}", $"/builds/{flatbed.Id}", StringComparison.Ordinal), width, scheme);
    }
}
