using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Reports;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Paper;

/// <summary>Reports of a build in one scenario.</summary>
internal static class BuildReports
{
    public static Outcome Whole(NamedBuild build, string? scenario, BuildReport report, Wish wish) => With(build, scenario, sheet =>
        wish.Write(report.Kind, report.Of(sheet, wish.Imprint(build, sheet)), sheet.Findings().Any(f => f.Finding.Verdict == Verdict.Fail)));

    /// <param name="calculation">An instance id, or a plain id: all its instances that exist here.</param>
    public static Outcome Calculation(NamedBuild build, string? scenario, string calculation, Wish wish) => With(build, scenario, sheet =>
    {
        var faults = new Faults();
        if (Cases.Of(sheet, calculation, wish.Measure, faults) is not { } cases) return Outcome.Faulty(build.Name, faults);
        return wish.Write("calculation", CalculationReport.Of(cases, sheet, wish.Imprint(build, sheet)), cases.Any(c => c.Findings.Any(f => f.Verdict == Verdict.Fail)));
    });

    private static Outcome With(NamedBuild build, string? scenario, Func<Sheet, Outcome> write)
    {
        var faults = new Faults();
        return (scenario ?? build.Comparing.Default(faults)) is { } name && build.Comparing.Sheet(name, faults) is { } sheet ? write(sheet) : Outcome.Faulty(build.Name, faults);
    }
}
