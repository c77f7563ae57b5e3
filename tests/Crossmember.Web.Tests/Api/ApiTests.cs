using System.Net;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Builds.Files;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Ripples;

namespace Crossmember.Web.Tests.Api;

/// <summary>The door for other programs, through the whole desk.</summary>
public sealed class ApiTests : IDisposable
{
    private readonly Desk _desk = new();

    public void Dispose() => _desk.Dispose();

    private static string Choice(string id, string option) =>
        $$$"""{"id":"{{{id}}}","stream":"bracken","kind":"choice.made","schema":1,"occurred":"2026-05-01T08:00:00.000Z","person":"ana","device":"tablet","subject":"scenarios/working/choices/tires","after":"{{{Opened}}}","payload":{"option":"{{{option}}}"}}""";

    private static string Note(string id) =>
        $$$"""{"id":"{{{id}}}","stream":"bracken","kind":"note.written","schema":1,"occurred":"2026-05-01T08:00:00.000Z","person":"ana","device":"tablet","subject":"slots/tires/notes","payload":{"text":"spare is flat"}}""";

    /// <summary>The entry that opened the what-if: the last anybody has seen above its choices.</summary>
    private static string Opened => FactText.Id(Bracken.File.Facts.Single(f => f.Subject == "scenarios/working").Id);

    private static string NewId(int n) => $"01900000-0000-7000-8000-{n:x12}";

    [Fact]
    public async Task A_build_comes_in_once_and_is_listed()
    {
        await _desk.WithBracken();
        var (_, again) = await _desk.Post("/api/import", Bracken.Json);
        Assert.Equal(0, again["appended"]!.GetValue<int>());
        var (_, list) = await _desk.Get("/api/builds");
        Assert.Equal("Bracken flatbed, invented", Assert.Single(list["builds"]!.AsArray())!["title"]!.GetValue<string>());
    }

    [Fact]
    public async Task A_wrong_file_is_answered_with_located_faults()
    {
        var (status, body) = await _desk.Post("/api/import", Bracken.Json.Replace("\"65 mph\"", "\"65 furlongs\"", StringComparison.Ordinal));
        Assert.Equal(400, status);
        Assert.Equal("crossmember.faults/1", body["format"]!.GetValue<string>());
        Assert.Equal("/slots/0/options/0/parameters/duty.cruise-speed/value", Assert.Single(body["faults"]!.AsArray())!["path"]!.GetValue<string>());
    }

    [Fact]
    public async Task Check_and_ripple_say_what_the_library_says()
    {
        await _desk.WithBracken();
        var (_, check) = await _desk.Get("/api/builds/bracken/check?scenario=working");
        Assert.Equal(JsonNode.Parse(SheetJson.Of(Bracken.With(), (0, 0))["findings"]!.ToJsonString())!.ToJsonString(), check["findings"]!.ToJsonString());
        await _desk.Post("/api/builds/bracken/facts", $"[{Choice(NewId(1), "at33")}]");
        var (_, ripple) = await _desk.Get("/api/builds/bracken/ripple?from=as-found&to=working");
        var expected = RippleJson.Of(Ripple.Between(Bracken.With(), Bracken.With(("tires", "at33"))));
        Assert.Equal(expected["rows"]!.ToJsonString(), ripple["rows"]!.ToJsonString());
    }

    [Fact]
    public async Task Sending_a_fact_again_changes_nothing()
    {
        await _desk.WithBracken();
        async Task<string> Outcome() => (await _desk.Post("/api/builds/bracken/facts", $"[{Note(NewId(2))}]")).Body["outcomes"]![0]!["outcome"]!.GetValue<string>();
        Assert.Equal("appended", await Outcome());
        Assert.Equal("acknowledged", await Outcome());
    }

    [Fact]
    public async Task Who_was_slower_online_is_told_and_from_a_queue_is_held()
    {
        await _desk.WithBracken();
        Assert.Equal(200, (await _desk.Post("/api/builds/bracken/facts", $"[{Choice(NewId(3), "at33")}]")).Status);
        var (status, late) = await _desk.Post("/api/builds/bracken/facts", $"[{Choice(NewId(4), "none")},{Note(NewId(5))}]");
        Assert.Equal(409, status);
        Assert.Equal(["conflict", "left-out"], late["outcomes"]!.AsArray().Select(o => o!["outcome"]!.GetValue<string>()));
        Assert.Equal("at33", late["outcomes"]![0]!["last"]!["payload"]!["option"]!.GetValue<string>());
        var (queued, held) = await _desk.Post("/api/builds/bracken/facts?arrival=queue", $"[{Choice(NewId(4), "none")},{Note(NewId(5))}]");
        Assert.Equal(200, queued);
        Assert.Equal(["held", "appended"], held["outcomes"]!.AsArray().Select(o => o!["outcome"]!.GetValue<string>()));
    }

    [Theory]
    [InlineData("{}", "")]
    [InlineData("[{]", "")]
    [InlineData("[1]", "/0")]
    public async Task What_is_no_list_of_facts_is_refused(string body, string path)
    {
        await _desk.WithBracken();
        var (status, faults) = await _desk.Post("/api/builds/bracken/facts", body);
        Assert.Equal(400, status);
        Assert.Equal(path, faults["faults"]![0]!["path"]!.GetValue<string>());
    }

    [Fact]
    public async Task A_fact_that_breaks_a_rule_is_located_in_the_list_and_nothing_is_written()
    {
        await _desk.WithBracken();
        var (status, body) = await _desk.Post("/api/builds/bracken/facts", $"[{Note(NewId(6))},{Choice(NewId(7), "no-such-option")}]");
        Assert.Equal(400, status);
        Assert.StartsWith("/1", body["faults"]![0]!["path"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("appended", (await _desk.Post("/api/builds/bracken/facts", $"[{Note(NewId(6))}]")).Body["outcomes"]![0]!["outcome"]!.GetValue<string>());
    }

    [Fact]
    public async Task A_fact_of_another_stream_is_refused()
    {
        await _desk.WithBracken();
        var (status, body) = await _desk.Post("/api/builds/other/facts", $"[{Note(NewId(8))}]");
        Assert.Equal((400, "/0/stream"), (status, body["faults"]![0]!["path"]!.GetValue<string>()));
    }

    [Fact]
    public async Task An_exported_build_comes_back_byte_for_byte()
    {
        await _desk.WithBracken();
        await _desk.Post("/api/builds/bracken/facts", $"[{Choice(NewId(9), "at33")},{Note(NewId(10))}]");
        var first = await _desk.Client.GetByteArrayAsync("/api/builds/bracken/export", TestContext.Current.CancellationToken);
        using var elsewhere = new Desk();
        Assert.Equal(200, (await elsewhere.Post("/api/import", Encoding.UTF8.GetString(first))).Status);
        Assert.Equal(first, await elsewhere.Client.GetByteArrayAsync("/api/builds/bracken/export", TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task An_attachment_is_kept_under_the_hash_of_its_content_and_never_run()
    {
        var hash = Convert.ToHexStringLower(SHA256.HashData("<script>1</script>"u8));
        var (_, kept) = await _desk.Post("/api/attachments?name=drawing.svg", "<script>1</script>", "image/svg+xml");
        Assert.Equal(hash, kept["hash"]!.GetValue<string>());
        using var back = await _desk.Client.GetAsync($"/api/attachments/{hash}", TestContext.Current.CancellationToken);
        Assert.Equal("<script>1</script>", await back.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        Assert.Equal("nosniff", Assert.Single(back.Headers.GetValues("X-Content-Type-Options")));
        Assert.StartsWith("sandbox", Assert.Single(back.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Equal(404, (await _desk.Get("/api/attachments/" + new string('0', 64))).Status);
    }

    [Theory]
    [InlineData("/api/builds/nobody/check")]
    [InlineData("/api/builds/nobody/ripple?from=as-found&to=working")]
    [InlineData("/api/builds/nobody/export")]
    [InlineData("/api/nothing")]
    public async Task What_is_not_there_is_said_to_be_so(string path)
    {
        var (status, body) = await _desk.Get(path);
        Assert.Equal((404, "crossmember.faults/1"), (status, body["format"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Names_of_scenarios_that_are_not_there_are_answered_with_those_that_are()
    {
        await _desk.WithBracken();
        foreach (var path in new[] { "check?scenario=dream", "ripple?from=as-found&to=approved", "ripple?from=as-found" })
            Assert.Equal(400, (await _desk.Get("/api/builds/bracken/" + path)).Status);
    }

    /// <summary>What a form of another site can send without asking first (Fetch standard: CORS-safelisted request-header, Content-Type).</summary>
    [Theory]
    [InlineData("/api/builds/bracken/facts", "text/plain")]
    [InlineData("/api/import", "application/x-www-form-urlencoded")]
    [InlineData("/api/attachments", "text/plain")]
    public async Task Bodies_that_any_form_can_send_are_not_taken(string path, string type) => Assert.Equal(415, (await _desk.Post(path, "[]", type)).Status);

    [Theory]
    [InlineData("http://elsewhere.example", 403)]
    [InlineData("null", 403)]
    [InlineData("http://localhost", 200)]
    [InlineData(null, 200)]
    public async Task Pages_of_other_sites_may_not_write(string? origin, int status) =>
        Assert.Equal(status, (await _desk.Post("/api/import", Bracken.Json, origin: origin)).Status);

    /// <summary>A public name pointed at this machine would make a foreign page count as our own.</summary>
    [Theory]
    [InlineData("rebound.example", HttpStatusCode.Forbidden)]
    [InlineData("127.0.0.1", HttpStatusCode.OK)]
    [InlineData("shop-pc", HttpStatusCode.OK)]
    [InlineData("shop.local", HttpStatusCode.OK)]
    public async Task A_name_that_is_not_of_this_network_is_not_answered(string host, HttpStatusCode status)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/api/builds") { Headers = { Host = host } };
        Assert.Equal(status, (await _desk.Client.SendAsync(request, TestContext.Current.CancellationToken)).StatusCode);
    }
}
