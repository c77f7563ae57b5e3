using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Paper;

namespace Crossmember.Documents.Reports;

/// <summary>A report of a whole build in one what-if.</summary>
/// <param name="Kind">Its name on the command line and in addresses.</param>
public sealed record BuildReport(string Kind, string Title, Func<Sheet, Imprint, Document> Of)
{
    public static BuildReport Sheet { get; } = new("sheet", "the sheet: the build in a few pages", SheetReport.Of);

    public static BuildReport Mass { get; } = new("mass", "mass and balance: loads, center of gravity, tipping, what makes it up", MassReport.Of);

    public static BuildReport Brakes { get; } = new("brakes", "brakes: calculation sheet, line schedule, bleeding, gauges, road test", BrakesReport.Of);

    public static IReadOnlyList<BuildReport> All { get; } = [Sheet, Mass, Brakes];

    public static BuildReport? Find(string kind) => All.FirstOrDefault(r => r.Kind == kind);
}
