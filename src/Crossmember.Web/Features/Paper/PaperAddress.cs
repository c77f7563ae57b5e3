using Crossmember.Documents.Reports;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Paper;

/// <summary>Where the reports of a build are had.</summary>
/// <param name="Instance">A calculation, one of its instances, or the kind of a report of the whole build; null: the sheet.</param>
public sealed record PaperAddress(string Build, string In, MeasureSystem Measure, string? Instance = null)
{
    /// <summary>The file, by its ending without the dot.</summary>
    public string File(string ending) => $"api/builds/{Uri.EscapeDataString(Build)}/report/{(Instance is null ? BuildReport.Sheet.Kind : BuildReport.Find(Instance) is { } whole ? whole.Kind : "calculation")}.{ending}{Query}&measure={Code(Measure)}";

    /// <summary>The page that makes it with its progress in view.</summary>
    public string Page => $"builds/{Uri.EscapeDataString(Build)}/paper{Query}";

    /// <summary>A calculation by itself, without a build.</summary>
    /// <param name="input">The input of <c>calc run</c>.</param>
    public static string OfInput(string calculation, string input, MeasureSystem measure, string ending) =>
        $"api/report/calculation.{ending}?calculation={Uri.EscapeDataString(calculation)}&input={Uri.EscapeDataString(input)}&measure={Code(measure)}";

    private static string Code(MeasureSystem measure) => measure == MeasureSystem.Metric ? "metric" : "us";

    private string Query => $"?in={Uri.EscapeDataString(In)}" + (Instance is null ? "" : $"&instance={Uri.EscapeDataString(Instance)}");
}
