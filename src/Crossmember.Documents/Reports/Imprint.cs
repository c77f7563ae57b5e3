using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>What a report bears besides its content.</summary>
/// <param name="Made">The instant it is dated with.</param>
/// <param name="Recorded">When the last entry it rests on was recorded; null where there is no journal.</param>
/// <param name="FromFile">Whether the build is a file's and not of the records.</param>
public sealed record Imprint(DateTimeOffset Made, MeasureSystem Measure, DateTimeOffset? Recorded = null, bool FromFile = false)
{
    /// <summary>As of which position of the records, and of which day.</summary>
    public string AsOf(Sheet sheet) => FromFile || sheet.Build.Position == 0 ? "a build file"
        : $"entry {sheet.Build.Position} of the build, {sheet.Shop.Position} of the shop" + (Recorded is { } at ? $", {Day(at)}" : "");

    public string Printed => $"{Day(Made)} {Made.UtcDateTime:HH:mm} UTC";

    /// <summary>At the foot of every page.</summary>
    public string Foot(Sheet? sheet) => (sheet is null ? "" : $"As of {AsOf(sheet)} · ") + $"made {Printed} · Crossmember, no inspection";

    private static string Day(DateTimeOffset at) => at.UtcDateTime.ToString("yyyy-MM-dd", null);
}
