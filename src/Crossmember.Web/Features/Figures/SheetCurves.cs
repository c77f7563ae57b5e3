using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Decisions;

namespace Crossmember.Web.Features.Figures;

/// <summary>The charts of one instance of a calculation, in one sheet or in two that are compared.</summary>
public static class SheetCurves
{
    /// <summary>Null where the instance does not exist in the sheet; none where it draws nothing or lacks what it needs.</summary>
    public static IReadOnlyList<CurveChart>? Of(Sheet now, Sheet? against, string instance, MeasureSystem measure) =>
        now.Instance(instance) is not { } state ? null
        : CurveChart.Of(Title(now, instance), SideOf(now, state), against?.Instance(instance) is { } past ? SideOf(against, past) : null, measure);

    /// <summary>What the calculation is called, and the members it is for.</summary>
    private static string Title(Sheet sheet, string instance)
    {
        // A check without a name is told by the title of its calculation.
        var name = new RowNames(sheet.Plan, sheet.Build).Finding(instance + "/");
        return name.Where.Length > 0 ? $"{name.Title}, {name.Where}" : name.Title;
    }

    private static Side SideOf(Sheet sheet, InstanceState state) => new(Words.Scenario(sheet.Scenario, sheet.Build), state.Shown().Curves);
}

/// <summary>Where the files of a chart are had.</summary>
public interface IChartFiles
{
    /// <summary>The instance, or the calculation, that draws it.</summary>
    string Instance { get; }

    /// <param name="ending"><c>svg</c>, <c>png</c> or <c>csv</c>.</param>
    string Address(string ending);
}

/// <summary>Where the files of a build's chart are had.</summary>
/// <param name="Picture">Which of the instance's charts, from 1.</param>
public sealed record CurveFiles(string Build, string Instance, string In, string? Against, MeasureSystem Measure, int Picture = 1) : IChartFiles
{
    public string Address(string ending) =>
        $"api/builds/{Uri.EscapeDataString(Build)}/curves/{Uri.EscapeDataString(Instance)}.{ending}?in={Uri.EscapeDataString(In)}"
        + (Against is null ? "" : $"&against={Uri.EscapeDataString(Against)}") + $"&measure={(Measure == MeasureSystem.Metric ? "metric" : "us")}" + (Picture == 1 ? "" : $"&picture={Picture}");
}
