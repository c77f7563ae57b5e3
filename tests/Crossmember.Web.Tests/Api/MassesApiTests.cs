using System.Xml.Linq;
using Crossmember.Web.Tests.VehicleMass;

namespace Crossmember.Web.Tests.Api;

/// <summary>The masses of a vehicle as files.</summary>
public sealed class MassesApiTests : IDisposable
{
    private readonly Desk _desk = new();

    public void Dispose() => _desk.Dispose();

    private async Task<HttpResponseMessage> Ask(string path)
    {
        await _desk.Post("/api/import", VehiclePages.Json);
        return await _desk.Client.GetAsync(path, TestContext.Current.CancellationToken);
    }

    [Fact]
    public async Task The_ledger_is_a_table_of_its_lines()
    {
        using var answer = await Ask("/api/builds/bracken/ledger.csv?in=working&load=empty&measure=us");
        Assert.Equal("text/csv", answer.Content.Headers.ContentType!.MediaType);
        var lines = (await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken)).Trim().Split("\r\n");
        Assert.Equal(4, lines.Length);
        Assert.Equal("Winch: drum,put on,64,3.2,-25,0,5,80,-16,-1.0782,vendor", lines[2]); // 64 x -25 of 1500 x 100 - 1600 lb in; a vendor's mass is taken to 5 %
    }

    [Fact]
    public async Task The_drawing_names_every_mass_and_load()
    {
        using var answer = await Ask("/api/builds/bracken/masses.svg?in=working&load=loaded");
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        var svg = XElement.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        var words = svg.Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value).ToList();
        Assert.Contains(words, w => w.Contains("Winch: drum, 64 lb, 25 in ahead of the front axle", StringComparison.Ordinal));
        Assert.Contains("○ don't know", words);
    }

    [Theory]
    [InlineData("/api/builds/bracken/ledger.csv?in=working&load=flying", 404)]
    [InlineData("/api/builds/bracken/ledger.csv?in=nothing", 400)]
    [InlineData("/api/builds/bracken/masses.svg?measure=cubits", 400)]
    [InlineData("/api/builds/nobody/masses.svg", 404)]
    public async Task What_is_not_there_is_named(string path, int status)
    {
        using var answer = await Ask(path);
        Assert.Equal(status, (int)answer.StatusCode);
        Assert.Contains("crossmember.faults/1", await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }
}
