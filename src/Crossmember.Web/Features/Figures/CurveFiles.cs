using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Figures;

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
