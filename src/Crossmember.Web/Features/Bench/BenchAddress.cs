using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Figures;

namespace Crossmember.Web.Features.Bench;

/// <summary>Where cards are found.</summary>
public static class BenchAddress
{
    public static string Of(string calculation, string? input = null) => $"bench/{Uri.EscapeDataString(calculation)}{(input is null or "{}" ? "" : $"?input={Uri.EscapeDataString(input)}")}";

    /// <param name="instance">An instance or a calculation; null: the bench of the build.</param>
    /// <param name="tried">What is tried on the card, as the input of <c>calc run</c>.</param>
    public static string Of(string build, string scenario, string? instance, string? tried = null) =>
        $"builds/{Uri.EscapeDataString(build)}/bench{(instance is null ? "" : "/" + Uri.EscapeDataString(instance))}?in={Uri.EscapeDataString(scenario)}"
        + (tried is null or "{}" ? "" : $"&input={Uri.EscapeDataString(tried)}");

    /// <summary>The card on which a finding was worked out; null for findings of the build itself.</summary>
    public static string? OfFinding(string build, string scenario, string finding) =>
        finding.StartsWith("model/", StringComparison.Ordinal) || finding.LastIndexOf('/') is not (> 0 and var cut) ? null : Of(build, scenario, finding[..cut]);

    /// <summary>The calculation of an instance id.</summary>
    public static string CalculationOf(string instance) => instance.Split('[')[0];

    public static string Item(string build, string scenario, string item) => $"builds/{Uri.EscapeDataString(build)}/decisions?item={Uri.EscapeDataString(item)}&in={Uri.EscapeDataString(scenario)}";
}

/// <summary>Where the files of a chart are had that was drawn without a build.</summary>
/// <param name="Input">As <c>calc run</c> takes it.</param>
/// <param name="Picture">Which of the charts, from 1.</param>
public sealed record CardFiles(string Instance, string Input, MeasureSystem Measure, int Picture = 1) : IChartFiles
{
    public string Address(string ending) =>
        $"api/calc/{Uri.EscapeDataString(Instance)}/curves.{ending}?input={Uri.EscapeDataString(Input)}&measure={(Measure == MeasureSystem.Metric ? "metric" : "us")}" + (Picture == 1 ? "" : $"&picture={Picture}");
}
