using System.Net.Http.Headers;
using System.Text;
using UglyToad.PdfPig;

namespace Crossmember.Web.Tests.Api;

/// <summary>Reports as files, asked for as another program or a link of a page does.</summary>
public sealed class ReportsApiTests : IAsyncLifetime
{
    private const string Reports = "/api/builds/bracken/report/";
    private const string Alone = "/api/report/calculation";
    private const string Engine = """{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":4.1,"gearRatio":1}""";

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

    private static string Text(byte[] pdf)
    {
        using var read = PdfDocument.Open(pdf);
        return string.Join(' ', read.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    [Theory]
    [InlineData("sheet.pdf?in=working", "application/pdf", "bracken-sheet.pdf", "attachment")]
    [InlineData("sheet.html?in=working", "text/html", "bracken-sheet.html", "inline")]
    [InlineData("calculation.pdf?instance=driveline.cruise", "application/pdf", "bracken-driveline.cruise.pdf", "attachment")]
    [InlineData("calculation.html?instance=driveline.engine-speed%5Bgear%3D4%2Crange%3Dhigh%5D", "text/html", "bracken-driveline.engine-speed[gear=4,range=high].html", "inline")]
    public async Task A_report_comes_under_its_name_and_nothing_in_it_is_ever_run(string file, string type, string name, string shown)
    {
        var (answer, content) = await File(Reports + file);
        Assert.True(answer.IsSuccessStatusCode, Encoding.UTF8.GetString(content));
        Assert.Equal(type, answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal(name, answer.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
        Assert.Equal(shown, answer.Content.Headers.ContentDisposition.DispositionType);
        Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
        Assert.StartsWith("sandbox; default-src 'none'", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")), StringComparison.Ordinal);
        var text = type == "application/pdf" ? Text(content) : Encoding.UTF8.GetString(content);
        Assert.Contains("Caution", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task It_says_as_of_which_entry_and_is_in_the_measures_asked_for()
    {
        var (_, metric) = await File(Reports + "sheet.html?measure=metric");
        Assert.Contains("size: A4", Encoding.UTF8.GetString(metric), StringComparison.Ordinal);
        Assert.Matches(@"entry \d+ of the build, \d+ of the shop, \d{4}-\d\d-\d\d", Encoding.UTF8.GetString(metric));
        var (_, letter) = await File(Reports + "sheet.pdf?measure=metric&paper=letter");
        using var read = PdfDocument.Open(letter);
        Assert.Equal(612, read.GetPage(1).Width);
    }

    /// <summary>The worked example of the formats page: 2714.5 rpm.</summary>
    [Fact]
    public async Task A_calculation_alone_takes_its_input_from_the_address_or_the_body()
    {
        var (byAddress, content) = await File($"{Alone}.html?calculation=driveline.engine-speed&input={Uri.EscapeDataString(Engine)}");
        Assert.True(byAddress.IsSuccessStatusCode);
        Assert.Contains("2714.5", Encoding.UTF8.GetString(content), StringComparison.Ordinal);
        using var body = new ByteArrayContent(Encoding.UTF8.GetBytes(Engine));
        body.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        var byBody = await _desk.Client.PostAsync($"{Alone}.pdf?calculation=driveline.engine-speed", body, TestContext.Current.CancellationToken);
        Assert.Contains("2714.5", Text(await byBody.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)), StringComparison.Ordinal);
        Assert.Equal("driveline.engine-speed.pdf", byBody.Content.Headers.ContentDisposition!.FileName!.Trim('"'));
    }

    [Fact]
    public async Task Without_an_input_it_says_what_to_measure()
    {
        var (answer, content) = await File($"{Alone}.html?calculation=driveline.engine-speed");
        Assert.True(answer.IsSuccessStatusCode);
        Assert.Contains("Not known, and how to get it", Encoding.UTF8.GetString(content), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/api/builds/brackn/report/sheet.pdf", 404, "GET /api/builds lists them")]
    [InlineData(Reports + "sheet.docx", 404, "sheet.pdf, sheet.html")]
    [InlineData(Reports + "sheets.pdf", 404, "sheet.pdf, sheet.html")]
    [InlineData(Reports + "sheet.pdf?in=wrking", 400, "working")]
    [InlineData(Reports + "sheet.pdf?measure=imperial", 400, "us or metric")]
    [InlineData(Reports + "sheet.pdf?paper=legal", 400, "a4 or letter")]
    [InlineData(Reports + "calculation.pdf", 400, "instance=ID")]
    [InlineData(Reports + "calculation.pdf?instance=driveline.cruse", 404, "driveline.cruise")]
    [InlineData(Alone + ".pdf", 400, "calculation=ID")]
    [InlineData(Alone + ".pdf?calculation=driveline.engin-speed", 404, "driveline.engine-speed")]
    [InlineData(Alone + ".pdf?calculation=driveline.engine-speed&input=%7B%22roadSped%22%3A1%7D", 400, "roadSpeed")]
    [InlineData(Alone + ".pdf?calculation=driveline.engine-speed&input=none", 400, "")]
    [InlineData("/api/report/sheet.pdf", 404, "calculation.pdf, calculation.html")]
    [InlineData("/api/papers/0123.pdf", 404, "make it again")]
    public async Task What_is_not_there_or_not_understood_is_a_fault_that_says_what_would_be_right(string path, int status, string right)
    {
        var (code, body) = await _desk.Get(path);
        Assert.Equal(status, code);
        Assert.Equal("crossmember.faults/1", (string?)body["format"]);
        Assert.Contains(right, (string)body["faults"]![0]!["right"]!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_form_of_another_site_cannot_send_an_input() =>
        Assert.Equal(415, (await _desk.Post($"{Alone}.pdf?calculation=driveline.engine-speed", Engine, "text/plain")).Status);
}
