using System.Net.Http.Headers;
using System.Text;
using System.Text.Json.Nodes;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.Logging;

namespace Crossmember.Web.Tests.Api;

/// <summary>The desk over a folder of its own, asked as other programs ask it.</summary>
public sealed class Desk : WebApplicationFactory<Program>
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-api-");

    public HttpClient Client => field ??= CreateClient();

    public async Task<(int Status, JsonNode Body)> Post(string path, string body, string type = "application/json", string? origin = null)
    {
        using var request = new HttpRequestMessage(HttpMethod.Post, path) { Content = new ByteArrayContent(Encoding.UTF8.GetBytes(body)) };
        request.Content.Headers.ContentType = new MediaTypeHeaderValue(type);
        if (origin is not null) request.Headers.Add("Origin", origin);
        return await Read(await Client.SendAsync(request, TestContext.Current.CancellationToken));
    }

    public async Task<(int Status, JsonNode Body)> Get(string path) => await Read(await Client.GetAsync(path, TestContext.Current.CancellationToken));

    public async Task<Desk> WithBracken()
    {
        var (status, body) = await Post("/api/import", Bracken.Json);
        Assert.True(status == 200, body.ToJsonString());
        return this;
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("data", _data.FullName);
        builder.ConfigureLogging(l => l.ClearProviders());
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing && _data.Exists) _data.Delete(recursive: true);
    }

    private static async Task<(int, JsonNode)> Read(HttpResponseMessage response)
    {
        var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        return ((int)response.StatusCode, text.StartsWith('{') ? JsonNode.Parse(text)! : JsonValue.Create(text));
    }
}
