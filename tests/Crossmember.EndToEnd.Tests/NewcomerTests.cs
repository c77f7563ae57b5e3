using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Crossmember.EndToEnd.Tests;

/// <summary>Somebody who has never seen the desk finds out, on the demo shop and in three clicks, why the 33 in tires are not just tires.</summary>
public sealed class NewcomerTests : IDisposable
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-newcomer-");
    private readonly WebDesk _desk;

    public NewcomerTests(WebDesk desk) => _desk = desk;

    public void Dispose() => _data.Delete(recursive: true);

    [Fact]
    public async Task Three_clicks_lead_from_today_to_what_the_tires_do_and_what_would_restore_it()
    {
        var demo = Path.Combine(_data.FullName, "demo");
        await Crossmember("demo", "--out", demo);
        var records = Path.Combine(_data.FullName, "records");
        await Crossmember(["import", .. Directory.GetFiles(demo).Order(StringComparer.Ordinal), "--data", records]);
        var ripple = JsonNode.Parse(await Crossmember("ripple", "packhorse", "--from", "as-found", "--to", "asked", "--data", records, "--json"))!["rows"]!.AsArray();
        using var program = new DeskProgram(records);
        var page = await _desk.OpenAs("Ana", (await program.Address()).ToString());

        // Which vehicle is in trouble, and why, stands first.
        await Expect(page.Locator(".vehicle-day").First).ToContainTextAsync("Packhorse");
        await Expect(page.Locator(".vehicle-day").First).ToContainTextAsync("One circuit for all four wheels");
        await page.GetByRole(AriaRole.Link, new() { Name = "1966 Tarn Packhorse, fire-patrol pickup to touring camper", Exact = true }).ClickAsync();
        await page.GetByLabel("what-if", new() { Exact = true }).SelectOptionAsync("asked");
        await Expect(page.Locator(".items a[href*='in=asked']").First).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Items" }).GetByRole(AriaRole.Link, new() { Name = "Tires" }).ClickAsync();

        var knock = page.Locator("#knock");
        await Expect(knock).ToContainTextAsync("33 in all-terrain");
        await Expect(knock.Locator(".flips")).ToContainTextAsync("an axle ratio of 4.62 would bring it back");
        // Larger tires ask more leg than the rule allows, and other gears: each with what would restore it.
        await Expect(knock.Locator(".remedies").First).ToContainTextAsync("Front brakes, drums: Relined");
        await Expect(knock.Locator(".remedies").Filter(new() { HasText = "Rear ring and pinion" }).First).ToBeVisibleAsync();
        await Expect(page.Locator(".ripple")).ToHaveAttributeAsync("data-rows", ripple.Count.ToString(CultureInfo.InvariantCulture));
        Assert.Equal(ripple.Where(r => (string?)r!["kind"] == "finding" && (string?)r["state"] == "flipped").Select(r => (string)r!["id"]!), await Ids(page.Locator(".flips li")));
        var shown = await Numbers(page);
        foreach (var row in ripple.Where(r => (string?)r!["kind"] is "result" or "parameter" && r["to"]?["value"] is JsonValue v && v.TryGetValue<double>(out _) && r["from"]?["value"] is JsonValue w && w.TryGetValue<double>(out _)))
            Assert.Equal(((double)row!["from"]!["value"]!, (double)row["to"]!["value"]!), shown[(string)row["id"]!]);
        await page.Context.DisposeAsync();
        await program.Kill();
    }

    private static async Task<IEnumerable<string>> Ids(ILocator rows) => await rows.EvaluateAllAsync<string[]>("rows => rows.flatMap(r => r.dataset.ids.split(' '))");

    /// <summary>What each row of the knock-on carries for programs, by its id.</summary>
    private static async Task<Dictionary<string, (double, double)>> Numbers(IPage page)
    {
        var rows = await page.Locator("tr[data-ids]").EvaluateAllAsync<string[]>(
            "rows => rows.flatMap(r => r.dataset.ids.split(' ').map(id => `${id}|${r.querySelector('.from data').getAttribute('value')}|${r.querySelector('.to data').getAttribute('value')}`))");
        static double Read(string text) => double.TryParse(text, CultureInfo.InvariantCulture, out var n) ? n : double.NaN;
        // Ids of masses and prices may hold blanks and fall apart here; those of results and keys do not.
        return rows.Select(r => r.Split('|')).GroupBy(r => r[0]).ToDictionary(g => g.Key, g => (Read(g.First()[1]), Read(g.First()[2])), StringComparer.Ordinal);
    }

    private static async Task<string> Crossmember(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(RepositoryRoot.Script("crossmember"), arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode is 0 or 1, await errors);
        return await output;
    }
}
