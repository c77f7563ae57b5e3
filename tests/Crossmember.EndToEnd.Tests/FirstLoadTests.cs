using System.Text.Json;
using Microsoft.Playwright;

namespace Crossmember.EndToEnd.Tests;

/// <summary>What a browser that has never been here fetches, as the network panel of its developer tools counts it.</summary>
public sealed class FirstLoadTests(WebDesk desk)
{
    private const double OneMegabyte = 1_000_000;

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_first_load_is_under_a_megabyte_asks_nothing_from_elsewhere_and_reports_no_error(bool decisions)
    {
        var flatbed = await Flatbed.New().On(desk);
        var page = await desk.Open("about:blank");
        var traffic = await Traffic.Of(page);
        var answer = await page.GotoAsync(decisions ? flatbed.Decisions + "?item=tires" : "/");
        Assert.True(answer!.Ok, $"the page answers {answer.Status}");
        // The name is asked for as soon as the page is alive: by then everything has been fetched that it needs.
        await Assertions.Expect(page.GetByLabel("Your name goes with what you decide")).ToBeVisibleAsync();
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        Assert.Contains(traffic.Asked, u => u.Contains("blazor.web.", StringComparison.Ordinal));
        Assert.Contains(traffic.Asked, u => u.EndsWith("text.woff2", StringComparison.Ordinal));
        Assert.DoesNotContain(traffic.Asked, u => new Uri(u) is { Scheme: not "data" } asked && asked.Authority != desk.Address.Authority);
        Assert.Empty(traffic.Errors);
        Assert.InRange(traffic.Bytes, 20_000, OneMegabyte);
        await page.Context.DisposeAsync();
    }

    /// <summary>Every request of a page, its web socket included.</summary>
    private sealed class Traffic
    {
        public List<string> Asked { get; } = [];

        public List<string> Errors { get; } = [];

        /// <summary>As they came over the wire: headers and compressed bodies, and the frames of the socket.</summary>
        public double Bytes { get; private set; }

        public static async Task<Traffic> Of(IPage page)
        {
            var traffic = new Traffic();
            page.Console += (_, m) => { if (m.Type == "error") traffic.Errors.Add(m.Text); };
            page.PageError += (_, e) => traffic.Errors.Add(e);
            var protocol = await page.Context.NewCDPSessionAsync(page);
            protocol.Event("Network.requestWillBeSent").OnEvent += (_, e) => traffic.Asked.Add(e!.Value.GetProperty("request").GetProperty("url").GetString()!);
            protocol.Event("Network.webSocketCreated").OnEvent += (_, e) => traffic.Asked.Add(e!.Value.GetProperty("url").GetString()!);
            protocol.Event("Network.loadingFinished").OnEvent += (_, e) => traffic.Bytes += e!.Value.GetProperty("encodedDataLength").GetDouble();
            protocol.Event("Network.webSocketFrameReceived").OnEvent += (_, e) => traffic.Bytes += Length(e!.Value.GetProperty("response"));
            await protocol.SendAsync("Network.enable");
            return traffic;
        }

        /// <summary>Frames of bytes are told in base 64: four characters for three bytes.</summary>
        private static double Length(JsonElement frame) => frame.GetProperty("payloadData").GetString()!.Length * (frame.GetProperty("opcode").GetInt32() == 2 ? 0.75 : 1);
    }
}
