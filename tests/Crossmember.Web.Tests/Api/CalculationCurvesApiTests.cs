using System.Globalization;

namespace Crossmember.Web.Tests.Api;

/// <summary>Curves of a calculation by itself, without any build.</summary>
public sealed class CalculationCurvesApiTests : IDisposable
{
    private const string Input = """{"gearRatios":{"3":"1.5","4":"1"},"axleRatio":"4.11","rollingRadius":"406.88 mm","redline":"2803 rpm"}""";

    private static readonly string s_curves = $"/api/calc/driveline.speed-curves/curves.csv?input={Uri.EscapeDataString(Input)}";

    private readonly Desk _desk = new();

    public void Dispose() => _desk.Dispose();

    [Theory]
    [InlineData("svg", "image/svg+xml")]
    [InlineData("png", "image/png")]
    [InlineData("csv", "text/csv")]
    public async Task A_curve_comes_without_a_build_and_is_never_run(string ending, string type)
    {
        var answer = await _desk.Client.GetAsync(s_curves.Replace("curves.csv", $"curves.{ending}", StringComparison.Ordinal), TestContext.Current.CancellationToken);
        Assert.Equal((200, type), ((int)answer.StatusCode, answer.Content.Headers.ContentType!.MediaType));
        Assert.StartsWith("sandbox", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        Assert.Equal($"driveline.speed-curves-curves.{ending}", answer.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
    }

    /// <summary>2803 rpm in direct on 4.11 with a rolling radius of 406.88 mm: pi n r / (30 G) = 29.06 m/s, 65 mph.</summary>
    [Fact]
    public async Task Its_numbers_are_those_of_the_inputs_in_the_address()
    {
        var text = await _desk.Client.GetStringAsync(s_curves, TestContext.Current.CancellationToken);
        var direct = text.TrimStart('\uFEFF').Split("\r\n").Where(l => l.StartsWith("gear 4", StringComparison.Ordinal)).Select(l => double.Parse(l.Split(',')[2], CultureInfo.InvariantCulture));
        Assert.Equal(65.0, direct.Max(), 1);
    }

    [Theory]
    [InlineData("/api/calc/driveline.speed-curve/curves.svg", 404, "driveline.speed-curve")]
    [InlineData("/api/calc/driveline.speed-curves/curves.gif?input=%7B%22gearRatios%22%3A%7B%224%22%3A%221%22%7D%2C%22axleRatio%22%3A%224%22%2C%22rollingRadius%22%3A%22400%20mm%22%2C%22redline%22%3A%223000%20rpm%22%7D", 404, "curves.gif")]
    [InlineData("/api/calc/driveline.speed-curves/picture.svg", 404, "picture.svg")]
    [InlineData("/api/calc/driveline.speed-curves/curves.svg", 404, "curves.svg")]
    [InlineData("/api/calc/driveline.cruise/curves.svg", 404, "curves.svg")]
    [InlineData("/api/calc/driveline.speed-curves/curves.svg?input=%7Bhalf", 400, "")]
    [InlineData("/api/calc/driveline.speed-curves/curves.svg?input=%7B%22axleRatio%22%3A%22four%22%7D", 400, "/axleRatio")]
    [InlineData("/api/calc/driveline.speed-curves/curves.svg?measure=cubits", 400, "measure")]
    public async Task What_cannot_be_drawn_is_answered_with_a_located_fault(string path, int status, string where)
    {
        var (answered, body) = await _desk.Get(path);
        Assert.Equal((status, where), (answered, body["faults"]![0]!["path"]!.GetValue<string>()));
        Assert.NotEmpty(body["faults"]![0]!["right"]!.GetValue<string>());
    }
}
