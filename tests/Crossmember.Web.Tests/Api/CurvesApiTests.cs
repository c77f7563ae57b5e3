using System.Globalization;
using System.Xml.Linq;

namespace Crossmember.Web.Tests.Api;

/// <summary>Curves as files, asked for as another program or a link of the page does.</summary>
public sealed class CurvesApiTests : IAsyncLifetime
{
    private const string Curves = "/api/builds/bracken/curves/";
    private const string High = Curves + "driveline.speed-curves%5Brange%3Dhigh%5D";

    private readonly Desk _desk = new();

    public async ValueTask InitializeAsync() => await _desk.WithBracken();

    public ValueTask DisposeAsync()
    {
        _desk.Dispose();
        return ValueTask.CompletedTask;
    }

    private async Task<(HttpResponseMessage Answer, byte[] Content)> File(string path)
    {
        var answer = await _desk.Client.GetAsync(path, TestContext.Current.CancellationToken);
        return (answer, await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
    }

    [Theory]
    [InlineData("svg", "image/svg+xml")]
    [InlineData("png", "image/png")]
    [InlineData("csv", "text/csv")]
    public async Task A_curve_comes_as_drawing_picture_or_table_under_its_name_and_is_never_run(string ending, string type)
    {
        var (answer, content) = await File($"{High}.{ending}?in=working");
        Assert.True(answer.IsSuccessStatusCode);
        Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal($"bracken-driveline.speed-curves[range=high].{ending}", answer.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.StartsWith("sandbox", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Equal(content, (await File($"{High}.{ending}?in=working")).Content);
    }

    /// <summary>At the redline of 3200 rpm, gears 6.40, 3.09, 1.69 and 1 run at speeds in the inverse proportion.</summary>
    [Fact]
    public async Task The_numbers_are_the_calculations_own()
    {
        var (_, content) = await File($"{High}.csv?in=working&measure=metric");
        var rows = System.Text.Encoding.UTF8.GetString(content).TrimStart('\uFEFF').Split("\r\n")[..^1].Select(r => r.Split(',')).ToList();
        Assert.Equal(["curve", "build", "road speed (km/h)", "engine speed (rpm)"], rows[0]);
        var ends = rows.Skip(1).GroupBy(r => r[0]).ToDictionary(g => g.Key, g => g.Select(r => double.Parse(r[2], CultureInfo.InvariantCulture)).Max());
        Assert.Equal(6.4, ends["gear 4"] / ends["gear 1"], 6);
        Assert.Equal(3.09, ends["gear 4"] / ends["gear 2"], 6);
        Assert.All(rows.Skip(1).GroupBy(r => r[0]), g => Assert.Equal(3200, g.Max(r => double.Parse(r[3], CultureInfo.InvariantCulture)), 6));
    }

    [Fact]
    public async Task Two_sides_stand_in_one_drawing_and_the_usual_what_if_needs_no_name()
    {
        var (_, content) = await File($"{High}.svg?against=as-found");
        var svg = XElement.Parse(System.Text.Encoding.UTF8.GetString(content));
        Assert.Contains("gear 4, as found: from 0 mph", svg.Elements().Single(e => e.Name.LocalName == "desc").Value, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/api/builds/nobody/curves/driveline.speed-curves.svg", 404, "")]
    [InlineData(High + ".gif?in=working", 404, "driveline.speed-curves[range=high].gif")]
    [InlineData(Curves + "driveline.speed-curves%5Brange%3Dreverse%5D.svg?in=working", 404, "driveline.speed-curves[range=reverse].svg")]
    [InlineData(Curves + "driveline.cruise.svg?in=working", 404, "driveline.cruise.svg")]
    [InlineData(High + ".svg?in=working&picture=2", 404, "picture")]
    [InlineData(High + ".svg?in=dream", 400, "/scenarios")]
    [InlineData(High + ".svg?in=working&against=approved", 400, "/scenarios")]
    [InlineData(High + ".svg?in=working&measure=cubits", 400, "measure")]
    [InlineData(High + ".svg?in=working&picture=first", 400, "picture")]
    public async Task What_cannot_be_had_is_answered_with_a_located_fault(string path, int status, string where)
    {
        var (answered, body) = await _desk.Get(path);
        Assert.Equal((status, "crossmember.faults/1"), (answered, body["format"]!.GetValue<string>()));
        Assert.Equal(where, body["faults"]![0]!["path"]!.GetValue<string>());
        Assert.NotEmpty(body["faults"]![0]!["right"]!.GetValue<string>());
    }

    /// <summary>The flatbed has no torque curve: the answer says how to get one.</summary>
    [Fact]
    public async Task A_curve_that_lacks_an_input_says_what_to_measure()
    {
        var (status, body) = await _desk.Get(Curves + "driveline.tractive-curves%5Bcondition%3Dempty,range%3Dhigh%5D.svg?in=working");
        Assert.Equal(404, status);
        Assert.Contains("torqueCurve", body["faults"]![0]!["right"]!.GetValue<string>(), StringComparison.Ordinal);
    }
}
