using System.CommandLine;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Sheets;

internal static class Check
{
    public static Verb Make(SharedOptions shared)
    {
        var build = new Argument<string>("BUILD") { Description = "a build file, or the id of a stored build" };
        var scenario = new Option<string?>("--scenario") { HelpName = "S", Description = "a scenario, as-found, approved, or approved@ (as it was then); default: the only one, else working" };
        return new("check", "Every calculation that binds to the master sheet, worst findings first.", "crossmember check packhorse", "crossmember check packhorse.json --scenario working --json")
        {
            Arguments = { build }, Options = { scenario },
            Runs = (line, terminal) => NamedBuild.With(line.GetRequiredValue(build), shared.Address(line), terminal, b => On(b, line.GetValue(scenario))),
        };
    }

    private static Outcome On(NamedBuild build, string? scenario)
    {
        var faults = new Faults();
        if ((scenario ?? build.Comparing.Default(faults)) is not { } name || build.Comparing.Sheet(name, faults) is not { } sheet) return Outcome.Faulty(build.Name, faults);
        return new Outcome.Result(() => SheetJson.Of(sheet, build.PositionOf(sheet)), output => SheetText.Write(build.Open.Build, sheet, output),
            sheet.Findings().Any(f => f.Finding.Verdict == Verdict.Fail));
    }
}

/// <summary>A sheet for reading.</summary>
internal static class SheetText
{
    private const double KilogramsOfPound = 0.45359237; // exact by definition

    public static void Write(Builds.Slots.Build build, Sheet sheet, TextWriter output)
    {
        output.WriteLine($"{build.Title} ({build.Id}), {sheet.Scenario}");
        var findings = sheet.Findings().ToList();
        foreach (var verdict in findings.GroupBy(f => f.Finding.Verdict))
        {
            output.WriteLine();
            output.WriteLine($"{Words.Of(verdict.Key)} ({verdict.Count()})");
            if (verdict.Key == Verdict.Unknown)
            {
                Unknown(sheet, output);
                continue;
            }
            foreach (var f in verdict) output.WriteLine($"  {f.Id}: {f.Finding.Text}");
        }
        var t = sheet.Totals;
        output.WriteLine();
        var table = new TextTable();
        table.Add("mass", t.Mass.Kilograms is { } kg ? $"{kg:0} kg ({kg / KilogramsOfPound:0} lb)" : "don't know" + (t.Mass.Missing.Count > 0 ? $" (weigh {string.Join(", ", t.Mass.Missing)})" : ""));
        foreach (var (category, money) in t.Cost) table.Add(category, money.ToString());
        table.Add("bought in all", t.CostTotal.ToString());
        foreach (var (trade, hours) in t.Hours) table.Add(trade, $"{hours:0.0} h" + (t.Labour.TryGetValue(trade, out var at) ? $", {at}" : ""));
        table.Add("hours in all", $"{t.HoursTotal:0.0} h" + (t.Labour.Count > 0 ? $", {t.Labour.Values.Aggregate((a, b) => a + b)}" : ""));
        table.Add("originality", t.Originality is { } r ? $"{100 * r:0} %" : "don't know");
        table.Write(output);
        output.WriteLine();
        output.WriteLine("Engineering help only: local rules and a qualified or licensed person decide before the vehicle is used.");
    }

    /// <summary>Not every check that waits, but what would settle it; --json has them all.</summary>
    private static void Unknown(Sheet sheet, TextWriter output)
    {
        output.WriteLine("  what would settle it:");
        var table = new TextTable();
        foreach (var u in Unsettled.Of(sheet)) table.Add(Words.Count(u.Checks, "check waits for", "checks wait for"), u.Meaning, u.Measure);
        table.Write(output, "    ");
    }
}
