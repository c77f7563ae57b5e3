using System.CommandLine;
using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Reports;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Cli.Commands.Paper;

/// <summary>Documents: a build's sheet, or any calculation, for paper or as a page.</summary>
internal static class Report
{
    private const string OfCalculation = "calculation";

    public static Verb Make(SharedOptions shared)
    {
        var kind = new Argument<string>("KIND") { Description = "sheet: the build in a few pages; mass: loads, balance and ledger; calculation: one calculation with its working" };
        var build = new Argument<string?>("BUILD") { Arity = ArgumentArity.ZeroOrOne, Description = "a build file, or the id of a stored build" };
        var scenario = new Option<string?>("--scenario") { HelpName = "S", Description = "a scenario, as-found, approved, or approved@ (as it was then); default: the only one, else working" };
        var calculation = new Option<string?>("--calculation") { HelpName = "ID", Description = "a calculation, or one instance of it: driveline.engine-speed[gear=4,range=high]" };
        var input = new Option<string?>("--input") { HelpName = "F", Description = "without BUILD: the calculation's input in JSON, as for calc run; - is standard input" };
        var to = new Option<string>("--out") { HelpName = "FILE", Required = true, Description = $"the file to write; its ending says which form: {PaperForm.Endings}" };
        var measure = new Option<string?>("--measure") { HelpName = "M", Description = "us (default) or metric" };
        var paper = new Option<string?>("--paper") { HelpName = "P", Description = "a4 or letter; default: letter for us, a4 for metric" };
        var at = new Option<string?>("--at") { HelpName = "INSTANT", Description = "the date it bears, such as 2026-11-26T12:00Z; default: now" };
        return new("report", "Writes a document as PDF or as a page that stands by itself.",
            "crossmember report sheet packhorse --scenario carried --out packhorse.pdf",
            "crossmember report mass packhorse --scenario working --out mass.pdf",
            "crossmember report brakes packhorse --scenario working --out brakes.pdf",
            "crossmember report calculation packhorse --calculation driveline.cruise --out cruise.html --measure metric",
            "echo '{\"size\":\"33x10.50R15LT\"}' | crossmember report calculation --calculation tires.dimensions --input - --out tire.pdf --paper a4")
        {
            Arguments = { kind, build }, Options = { scenario, calculation, input, to, measure, paper, at },
            Runs = (line, terminal) => Wish.Of(line.GetRequiredValue(to), line.GetValue(measure), line.GetValue(paper), line.GetValue(at), out var misused) is { } wish
                ? (line.GetRequiredValue(kind), line.GetValue(build)) switch
                {
                    (var whole, null) when BuildReport.Find(whole) is not null => new Outcome.Misused($"which build's {whole}?", $"crossmember report {whole} BUILD --out FILE"),
                    (var whole, _) when BuildReport.Find(whole) is not null && (line.GetValue(calculation) is not null || line.GetValue(input) is not null) =>
                        new Outcome.Misused($"--calculation and --input do not go with a {whole}", $"crossmember report {OfCalculation} ..."),
                    (var whole, { } name) when BuildReport.Find(whole) is { } report => NamedBuild.With(name, shared.Address(line), terminal, b => BuildReports.Whole(b, line.GetValue(scenario), report, wish)),
                    (OfCalculation, _) when line.GetValue(calculation) is null => new Outcome.Misused("which calculation?", "--calculation ID; 'crossmember calc list' lists them"),
                    (OfCalculation, { }) when line.GetValue(input) is not null => new Outcome.Misused("--input and BUILD exclude each other", "the inputs come from the build, or from the file"),
                    (OfCalculation, { } name) => NamedBuild.With(name, shared.Address(line), terminal, b => BuildReports.Calculation(b, line.GetValue(scenario), line.GetValue(calculation)!, wish)),
                    (OfCalculation, null) => InputReport.Of(line.GetValue(calculation)!, line.GetValue(input), wish, terminal),
                    (var other, _) => new Outcome.Misused($"'{other}' is no kind of report", $"one of: {string.Join(", ", BuildReport.All.Select(r => r.Kind))}, {OfCalculation}"),
                }
                : misused!,
        };
    }
}

/// <summary>How a report is wanted.</summary>
internal sealed record Wish(string File, PaperForm Form, PageSize Paper, MeasureSystem Measure, DateTimeOffset Made)
{
    public static Wish? Of(string file, string? measure, string? paper, string? at, out Outcome? wrong)
    {
        wrong = null;
        var instant = TimeProvider.System.GetUtcNow();
        if (PaperForm.Of(file) is not { } form) wrong = Outcome.Faulty(file, "its ending names no form that a report is written in", $"end it in {PaperForm.Endings}");
        else if (measure is not (null or "us" or "metric")) wrong = new Outcome.Misused($"'{measure}' is no measure", "--measure us or --measure metric");
        else if (paper is not null && PageSize.Find(paper) is null) wrong = new Outcome.Misused($"'{paper}' is no paper", "--paper a4 or --paper letter");
        else if (at is not null && !DateTimeOffset.TryParse(at, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out instant))
            wrong = new Outcome.Misused($"'{at}' is no instant", "such as --at 2026-11-26T12:00Z");
        else
        {
            var system = measure == "metric" ? MeasureSystem.Metric : MeasureSystem.UsCustomary;
            return new(file, form, paper is null ? PageSize.For(system) : PageSize.Find(paper)!, system, instant);
        }
        return null;
    }

    /// <summary>Writes the file, and says so.</summary>
    /// <param name="fails">Whether a finding in it fails.</param>
    public Outcome Write(string kind, Document document, bool fails)
    {
        var printed = Form.Write(document, Paper);
        NamedFile.Write(File, printed.Content);
        return new Outcome.Result(
            () => new JsonObject { ["format"] = "crossmember.reported/1", ["kind"] = kind, ["file"] = File, ["bytes"] = printed.Content.Length, ["pages"] = printed.Pages },
            output => output.WriteLine($"{document.Title}: {(printed.Pages is { } pages ? Words.Count(pages, "page", "pages") : "a page that stands by itself")} in {File}"), fails);
    }

    public Imprint Imprint() => new(Made, Measure);

    public Imprint Imprint(NamedBuild build, Sheet sheet) => new(Made, Measure, build.Recorded(sheet.Build.Position), build.IsFile);
}
