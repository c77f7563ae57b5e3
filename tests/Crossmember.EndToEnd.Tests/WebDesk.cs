using Crossmember.EndToEnd.Tests;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.Logging;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(WebDesk))]

namespace Crossmember.EndToEnd.Tests;

/// <summary>The real web desk on a free loopback port, with an empty data folder of its own, and one browser for all page tests.</summary>
/// <remarks>The pages are drawn before they answer: a click is followed by <see cref="Assertions.Expect(IPage)"/>, which waits, never by a pause.</remarks>
public sealed class WebDesk : WebApplicationFactory<Program>, IAsyncLifetime
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-pages-");
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public Uri Address { get; private set; } = new("about:blank");

    public string DataFolder => _data.FullName;

    public async ValueTask InitializeAsync()
    {
        UseKestrel(0);
        StartServer();
        Address = ClientOptions.BaseAddress;
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium(),
            Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"],
        });
    }

    /// <summary>A fresh browser window on the desk; dispose of its context with it.</summary>
    public async Task<IPage> Open(string path, int width = 1280, int height = 800, ColorScheme scheme = ColorScheme.Light)
    {
        var context = await _browser!.NewContextAsync(new()
        {
            BaseURL = Address.ToString(), ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme,
        });
        var page = await context.NewPageAsync();
        await page.GotoAsync(path);
        return page;
    }

    /// <summary>A window of somebody who has given their name before, ready to be worked with.</summary>
    public async Task<IPage> OpenAs(string person, string path, int width = 1920, ColorScheme scheme = ColorScheme.Light)
    {
        var page = await Open("about:blank", width, 1080, scheme);
        await page.AddInitScriptAsync($"localStorage.setItem('desk.person', '{person}')");
        await page.GotoAsync(path);
        // A desk that has just started works everything out for the first time, beside other tests.
        await Assertions.Expect(page.GetByRole(AriaRole.Button, new() { Name = $"You: {person}" })).ToBeVisibleAsync(new() { Timeout = 30_000 });
        return page;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("data", DataFolder);
        builder.ConfigureLogging(l => l.SetMinimumLevel(LogLevel.Warning));
    }

    public override async ValueTask DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
        _playwright?.Dispose();
        await base.DisposeAsync();
        _data.Delete(recursive: true);
    }

    private static string Chromium() =>
        Environment.GetEnvironmentVariable("CROSSMEMBER_CHROMIUM") is { Length: > 0 } named ? named
        : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(p => Path.Combine(p, "chromium")).FirstOrDefault(File.Exists)
          ?? throw new InvalidOperationException("The page tests need the browser chromium: install it, or name one in CROSSMEMBER_CHROMIUM.");
}
