using System.Globalization;
using Microsoft.Playwright;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The Vehicle page in a browser: marks are dragged, nudged, kept and taken back. 260 lb of tires moved by a quarter of the wheelbase are 65 lb from axle to axle.</summary>
public sealed class VehicleTests(WebDesk desk)
{
    private const string Set = "slots/tires/options/at33/set";

    private async Task<IPage> Open(int width = 1920)
    {
        var flatbed = await Flatbed.New("\"id\":\"working\",\"base\":null,\"choices\":{}", "\"id\":\"working\",\"base\":null,\"choices\":{\"tires\":\"at33\"}").On(desk);
        return await desk.OpenAs("Ana", $"/builds/{flatbed.Id}/vehicle?in=working", width);
    }

    private static ILocator Mark(IPage page, string part = "wide") => page.Locator($".masses .{part} [data-mass='{Set}'][data-view=side]");

    private static ILocator Front(IPage page) => page.Locator(".loads-table tbody tr").First.Locator("td").First;

    /// <summary>Pixels of the screen for a length, m.</summary>
    private static async Task<float> Pixels(IPage page, double meters, string part = "wide") => (float)(meters * double.Parse(
        await page.Locator($".masses .{part} svg").EvaluateAsync<string>("e => String(e.dataset.scale * e.getScreenCTM().a)"), CultureInfo.InvariantCulture));

    private static async Task Drag(IPage page, double meters)
    {
        var box = (await Mark(page).BoundingBoxAsync())!;
        var (x, y, far) = (box.X + (box.Width / 2), box.Y + (box.Height / 2), await Pixels(page, meters));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + far, y, new() { Steps = 8 });
        await page.Mouse.UpAsync();
    }

    [Fact]
    public async Task A_mark_is_dragged_looked_at_and_put_back()
    {
        var page = await Open();
        await Assertions.Expect(Front(page)).ToContainTextAsync("2030 lb");
        await Drag(page, 25 * 0.0254);
        await Assertions.Expect(Front(page)).ToContainTextAsync("1965 lb");
        await Assertions.Expect(page.Locator("#place-x")).ToHaveValueAsync("75 in");
        await Assertions.Expect(page.Locator(".place-knock tbody tr").First).ToContainTextAsync("−65 lb");
        await Assertions.Expect(Mark(page)).ToBeFocusedAsync();
        await page.Keyboard.PressAsync("Escape");
        await Assertions.Expect(Front(page)).ToContainTextAsync("2030 lb");
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task Arrow_keys_move_the_picked_mark_and_Enter_keeps_it()
    {
        var page = await Open();
        await page.GetByRole(AriaRole.Button, new() { Name = "Tires: set" }).ClickAsync();
        await Mark(page).FocusAsync();
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await page.Keyboard.PressAsync("ArrowUp");
        await Assertions.Expect(page.Locator("#place-x")).ToHaveValueAsync("55 in");
        await Assertions.Expect(page.Locator("#place-z")).ToHaveValueAsync("0.5 in");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator(".note.said")).ToContainTextAsync("33 in all-terrain");
        await page.ReloadAsync();
        await Assertions.Expect(Front(page)).ToContainTextAsync("2017 lb"); // 2030 - 13
        await page.Context.DisposeAsync();
    }

    [Fact]
    public async Task What_was_typed_for_a_place_survives_a_reload()
    {
        var page = await Open();
        await page.GetByRole(AriaRole.Button, new() { Name = "Tires: set" }).ClickAsync();
        await page.Locator("#place-x").FillAsync("6 ft 3 in");
        await Assertions.Expect(Front(page)).ToContainTextAsync("1965 lb");
        await page.ReloadAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Tires: set" }).ClickAsync();
        await Assertions.Expect(page.Locator("#place-x")).ToHaveValueAsync("6 ft 3 in");
        await Assertions.Expect(Front(page)).ToContainTextAsync("1965 lb");
        await page.Context.DisposeAsync();
    }

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task The_weighing_sheet_is_one_page_of_paper(string format)
    {
        var page = await Open();
        await page.GetByRole(AriaRole.Link, new() { Name = "Weighing sheet to print" }).ClickAsync();
        await Assertions.Expect(page.Locator(".weigh-sheet h1")).ToBeVisibleAsync();
        using var document = UglyToad.PdfPig.PdfDocument.Open(await page.PdfAsync(new() { Format = format }));
        Assert.Equal(1, document.NumberOfPages);
        await page.Context.DisposeAsync();
    }
}
