using UglyToad.PdfPig;

namespace Crossmember.Cli.Tests;

/// <summary>Reports as a person asks for them: a file of the form that its ending names.</summary>
public sealed class ReportTests : IDisposable
{
    private const string Tire = """{"size":"33x10.50R15LT"}""";

    private readonly Place _place = new();

    public ReportTests() => _place.Run("demo", "--out", _place.Folder);

    private string Demo => At("packhorse.json");

    public void Dispose() => _place.Dispose();

    private string At(string name) => Path.Combine(_place.Folder, name);

    private static string Text(string pdf)
    {
        using var read = PdfDocument.Open(pdf);
        return string.Join(' ', read.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
    }

    [Fact]
    public void The_sheet_of_a_build_comes_as_pdf_and_as_a_page()
    {
        var pdf = _place.Run("report", "sheet", Demo, "--out", At("s.pdf"), "--json");
        Assert.Equal((1, ""), (pdf.Code, pdf.Error)); // the wish overloads the rear axle: a finding fails, the report is written all the same
        Assert.Equal("crossmember.reported/1", (string?)pdf.Json["format"]);
        using (var read = PdfDocument.Open(At("s.pdf"))) Assert.Equal((int)pdf.Json["pages"]!, read.NumberOfPages);
        Assert.Equal((long)pdf.Json["bytes"]!, new FileInfo(At("s.pdf")).Length);
        Assert.Contains("Packhorse", Text(At("s.pdf")), StringComparison.Ordinal);
        var html = _place.Run("report", "sheet", Demo, "--out", At("s.html"), "--json");
        Assert.Null(html.Json["pages"]);
        Assert.StartsWith("<!DOCTYPE html>", File.ReadAllText(At("s.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_failing_check_it_ends_with_0()
    {
        Assert.Equal(0, _place.Run("report", "sheet", At("steading.json"), "--out", At("s.pdf")).Code);
        Assert.Equal(0, _place.Run("report", "calculation", Demo, "--calculation", "tires.dimensions", "--out", At("t.pdf")).Code);
        Assert.Equal(1, _place.Run("report", "calculation", Demo, "--calculation", "driveline.ratio-mismatch", "--out", At("m.pdf")).Code);
    }

    [Fact]
    public void Mass_and_balance_is_a_report_of_its_own()
    {
        var mass = _place.Run("report", "mass", Demo, "--out", At("mass.pdf"), "--json");
        Assert.Equal((1, ""), (mass.Code, mass.Error)); // the rear axle again
        Assert.Equal("mass", (string?)mass.Json["kind"]);
        Assert.Equal(2, _place.Run("report", "mass", Demo, "--calculation", "mass.axle-load", "--out", At("m.pdf")).Code);
        Assert.Contains("sheet, mass, brakes, calculation", _place.Run("report", "balance", Demo, "--out", At("m.pdf")).Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("us", "", 612, 792)]
    [InlineData("metric", "", 595.276, 841.890)]
    [InlineData("us", "a4", 595.276, 841.890)]
    [InlineData("metric", "letter", 612, 792)]
    public void The_paper_follows_the_measures_unless_it_is_named(string measure, string paper, double width, double height)
    {
        Assert.Equal(1, _place.Run(["report", "sheet", Demo, "--out", At("s.pdf"), "--measure", measure, .. paper.Length > 0 ? new[] { "--paper", paper } : []]).Code);
        using var read = PdfDocument.Open(At("s.pdf"));
        Assert.Equal((width, height), (Math.Round(read.GetPage(1).Width, 3), Math.Round(read.GetPage(1).Height, 3)));
        Assert.Contains(measure == "us" ? "3300 lb" : "1496.9 kg", Text(At("s.pdf")), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_at_the_same_instant_is_the_same_bytes()
    {
        foreach (var ending in (string[])["pdf", "html"])
        {
            foreach (var name in (string[])["a", "b"]) _place.Run("report", "sheet", Demo, "--out", At($"{name}.{ending}"), "--at", "2026-11-26T12:00Z");
            Assert.Equal(File.ReadAllBytes(At($"a.{ending}")), File.ReadAllBytes(At($"b.{ending}")));
        }
        Assert.Contains("2026-11-26 12:00 UTC", File.ReadAllText(At("a.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_stored_build_says_as_of_which_entry_and_day()
    {
        _place.Run("import", At("packhorse.json"));
        Assert.Equal(1, _place.Run("report", "sheet", "packhorse", "--scenario", "as-found", "--out", At("s.html")).Code);
        Assert.Matches(@"entry \d+ of the build, \d+ of the shop, \d{4}-\d\d-\d\d", File.ReadAllText(At("s.html")));
        _place.Run("report", "sheet", Demo, "--out", At("f.html"));
        Assert.Contains("As of a build file", File.ReadAllText(At("f.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_calculation_is_one_instance_or_all_of_them()
    {
        Assert.Equal(0, _place.Run("report", "calculation", Demo, "--calculation", "driveline.engine-speed[gear=4,range=high]", "--out", At("one.html")).Code);
        Assert.Equal(0, _place.Run("report", "calculation", Demo, "--calculation", "driveline.engine-speed", "--out", At("all.html")).Code);
        string one = File.ReadAllText(At("one.html")), all = File.ReadAllText(At("all.html"));
        Assert.Contains("driveline.engine-speed[gear=4,range=high]", one, StringComparison.Ordinal);
        Assert.DoesNotContain("low range", one, StringComparison.Ordinal);
        foreach (var where in (string[])["Gear 1, high range", "Gear 4, low range"]) Assert.Contains(where, all, StringComparison.Ordinal);
    }

    /// <summary>33 in is 838.2 mm exactly, of any source: 1 in = 25.4 mm.</summary>
    [Fact]
    public void A_calculation_alone_takes_its_input_from_a_file_or_from_standard_input()
    {
        var file = _place.File("tire.json", Tire);
        Assert.Equal(0, _place.Run("report", "calculation", "--calculation", "tires.dimensions", "--input", file, "--out", At("a.pdf"), "--measure", "metric", "--at", "2026-11-26T12:00Z").Code);
        Assert.Equal(0, _place.Run(Tire, ["report", "calculation", "--calculation", "tires.dimensions", "--input", "-", "--out", At("b.pdf"), "--measure", "metric", "--at", "2026-11-26T12:00Z"]).Code);
        Assert.Equal(File.ReadAllBytes(At("a.pdf")), File.ReadAllBytes(At("b.pdf")));
        Assert.Contains("838.2 mm", Text(At("a.pdf")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("report sheet packhorse.json --out s.docx", "end it in .pdf or .html")]
    [InlineData("report sheet --out s.pdf", "crossmember report sheet BUILD")]
    [InlineData("report shet packhorse.json --out s.pdf", "one of: sheet, mass, brakes, calculation")]
    [InlineData("report sheet packhorse.json --calculation tires.load --out s.pdf", "do not go with a sheet")]
    [InlineData("report calculation packhorse.json --out s.pdf", "--calculation ID")]
    [InlineData("report calculation packhorse.json --calculation tires.lod --out s.pdf", "tires.load")]
    [InlineData("report calculation packhorse.json --calculation tires.load --input x.json --out s.pdf", "exclude each other")]
    [InlineData("report calculation --calculation tires.load --out s.pdf", "--input FILE")]
    [InlineData("report calculation --calculation tires.lod --input x.json --out s.pdf", "nearest: tires.load")]
    [InlineData("report calculation --calculation tires.load[axle=front] --input x.json --out s.pdf", "an instance needs a BUILD")]
    [InlineData("report calculation --calculation tires.load --input x.json --out s.pdf", "there is no such file")]
    [InlineData("report sheet packhorse.json --scenario wrking --out s.pdf", "carried")]
    [InlineData("report sheet nowhere.json --out s.pdf", "there is no such file")]
    [InlineData("report sheet packhorse.json --measure imperial --out s.pdf", "--measure us or --measure metric")]
    [InlineData("report sheet packhorse.json --paper legal --out s.pdf", "--paper a4 or --paper letter")]
    [InlineData("report sheet packhorse.json --at yesterday --out s.pdf", "2026-11-26T12:00Z")]
    public void What_is_not_right_is_exit_2_in_one_line_and_writes_nothing(string line, string right)
    {
        var words = line.Split(' ').Select(w => w.EndsWith(".json", StringComparison.Ordinal) || w.StartsWith("s.", StringComparison.Ordinal) ? At(w) : w);
        var used = _place.Run([.. words, "--json"]);
        Assert.Equal(2, used.Code);
        Assert.Equal("crossmember.faults/1", (string?)used.Json["format"]);
        Assert.Contains(right, used.Error, StringComparison.Ordinal);
        Assert.Single(used.Error.TrimEnd().Split('\n'));
        Assert.Empty(Directory.EnumerateFiles(_place.Folder, "s.*"));
    }

    [Fact]
    public void A_fault_in_the_input_is_told_at_its_place()
    {
        var file = _place.File("in.json", """{"roadSped":"65 mph"}""");
        var used = _place.Run("report", "calculation", "--calculation", "driveline.engine-speed", "--input", file, "--out", At("s.pdf"));
        Assert.Equal(2, used.Code);
        Assert.StartsWith($"{file}: /roadSped: ", used.Error, StringComparison.Ordinal);
    }
}
