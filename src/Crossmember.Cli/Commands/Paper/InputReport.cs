using Crossmember.Documents.Reports;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Paper;

/// <summary>A report of a calculation that stands alone, on inputs from a file.</summary>
internal static class InputReport
{
    public static Outcome Of(string id, string? file, Wish wish, Terminal terminal)
    {
        if (CalculationList.Find(id) is not { } calculation)
            return new Outcome.Misused($"there is no calculation '{id}'", id.Contains('[', StringComparison.Ordinal) ? "an instance needs a BUILD; without one, name the calculation alone"
                : $"nearest: {Nearest.To(id, CalculationList.All.Select(c => c.Id))}");
        if (file is null) return new Outcome.Misused("there is neither a BUILD nor an --input", "name a build, or give the inputs with --input FILE");
        var faults = new Faults();
        var content = file == "-" ? NamedFile.ReadAll(terminal.In) : NamedFile.Read(file, faults);
        if (content is null || Case.Given(calculation, content, wish.Measure, faults) is not { } one) return Outcome.Faulty(file, faults);
        return wish.Write("calculation", CalculationReport.Of(one, wish.Imprint()), one.Findings.Any(f => f.Verdict == Verdict.Fail));
    }
}
