using Microsoft.Playwright;

namespace Crossmember.PageBenchmarks;

/// <summary>One browser window that has never been here.</summary>
internal sealed class Visit : IAsyncDisposable
{
    private const string Alive = "document.querySelector('.tools button b')?.textContent === 'Bench'";

    private readonly IBrowserContext _context;
    private int _requests;
    private double _bytes, _socketBytes;

    private Visit(IBrowserContext context, IPage page) => (_context, Page) = (context, page);

    public IPage Page { get; }

    public static async Task<Visit> Open(IBrowser browser)
    {
        var context = await browser.NewContextAsync(new() { ViewportSize = new() { Width = 1920, Height = 1080 } });
        var visit = new Visit(context, await context.NewPageAsync());
        // The name of a person appears on the page as soon as it is connected: that it is there says that the page is alive.
        await visit.Page.AddInitScriptAsync("localStorage.setItem('desk.person', 'Bench')");
        var protocol = await context.NewCDPSessionAsync(visit.Page);
        protocol.Event("Network.requestWillBeSent").OnEvent += (_, _) => visit._requests++;
        protocol.Event("Network.webSocketCreated").OnEvent += (_, _) => visit._requests++;
        protocol.Event("Network.loadingFinished").OnEvent += (_, e) => visit._bytes += e!.Value.GetProperty("encodedDataLength").GetDouble();
        protocol.Event("Network.webSocketFrameReceived").OnEvent += (_, e) => visit._socketBytes += e!.Value.GetProperty("response").GetProperty("payloadData").GetString()!.Length * 0.75;
        await protocol.SendAsync("Network.enable");
        return visit;
    }

    public async Task Goto(Uri address)
    {
        await Page.GotoAsync(address.ToString());
        await Page.WaitForFunctionAsync(Alive);
    }

    /// <summary>Everything a first load is judged by.</summary>
    public async Task FirstLoad(Uri address, string name, Figures figures)
    {
        await Goto(address);
        figures.Add($"{name}, interactive", "ms", await Page.EvaluateAsync<double>("performance.now()"));
        await Page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        figures.Add($"{name}, first contentful paint", "ms", await Paint());
        figures.Add($"{name}, requests with the socket", "", _requests);
        figures.Add($"{name}, transferred", "KiB", _bytes / 1024);
        figures.Add($"{name}, received by the socket", "KiB", _socketBytes / 1024);
    }

    /// <summary>A page without anything of ours, from the same server.</summary>
    public async Task BareFile(Uri address, Figures figures)
    {
        await Page.GotoAsync(address.ToString());
        figures.Add("peer: one static file in a window of its own, first contentful paint", "ms", await Paint());
    }

    /// <summary>Goes on to the item of the page with the most options that could be chosen.</summary>
    public async Task GotoItemWithOptions()
    {
        var (best, most) = ("", 0);
        foreach (var item in await Page.Locator(".items li a[title]").EvaluateAllAsync<string[]>("all => all.map(a => a.href)"))
        {
            await Goto(new(item));
            if (await Page.Locator(".option:not(.chosen) button.look").CountAsync() is var options && options > most) (best, most) = (item, options);
        }
        await Goto(new(best));
    }

    public async ValueTask DisposeAsync() => await _context.DisposeAsync();

    private Task<double> Paint() => Page.EvaluateAsync<double>(
        "new Promise(done => new PerformanceObserver(l => { const p = l.getEntriesByName('first-contentful-paint')[0]; if (p) done(p.startTime); }).observe({ type: 'paint', buffered: true }))");
}
