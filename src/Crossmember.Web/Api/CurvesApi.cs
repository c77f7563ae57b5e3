using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;
using Microsoft.AspNetCore.Mvc;

namespace Crossmember.Web.Api;

/// <summary>Curves of a build as files: drawing, picture or table.</summary>
public static class CurvesApi
{
    private const string Endings = "svg, png or csv";

    /// <param name="file">Instance id and ending, as in <c>driveline.speed-curves[range=high].svg</c>.</param>
    public static IResult Get(string id, string file, [FromQuery(Name = "in")] string? scenario, string? against, string? measure, string? picture, HttpContext context, ShopDesk desk)
    {
        if (desk.Open(id) is not { } open) return Answers.NoBuild(id);
        var faults = new Faults();
        var comparing = desk.Shop.Comparing(open);
        var now = (scenario ?? comparing.Default(faults)) is { } name ? comparing.Sheet(name, faults) : null;
        var then = against is null ? null : comparing.Sheet(against, faults);
        if (measure is not (null or "us" or "metric")) faults.Add("measure", $"'{measure}' is no measure", "us or metric");
        if (!int.TryParse(picture ?? "1", out var which)) faults.Add("picture", $"'{picture}' is no number", "which of the pictures, from 1");
        if (faults.Any || now is null) return Answers.Faults(faults.List);

        var instance = Path.GetFileNameWithoutExtension(file);
        var system = measure == "metric" ? MeasureSystem.Metric : MeasureSystem.UsCustomary;
        if (SheetCurves.Of(now, then, instance, system) is not { } charts) return NotThere(file, $"there is no '{instance}' in '{now.Scenario}'", $"nearest: {Nearest.To(instance, Known(now))}");
        if (charts.Count == 0) return NotThere(file, $"'{instance}' draws no curve here", WhatIsMissing(now.Instance(instance)!));
        if (which < 1 || which > charts.Count) return NotThere("picture", $"there is no picture {which}", $"1 to {charts.Count}");
        return Written(charts[which - 1], Path.GetExtension(file)) is not var (content, type) ? NotThere(file, $"'{Path.GetExtension(file)}' is no kind of file that a curve is written as", Endings)
            : SafeFiles.Send(content, type, $"{id}-{file}", context);
    }

    private static (byte[] Content, string Type)? Written(CurveChart chart, string ending) => ending switch
    {
        ".svg" => (CurveSvg.Write(chart, PictureSize.Wide(chart)), "image/svg+xml"),
        ".png" => (CurvePng.Write(chart, PictureSize.Wide(chart)), "image/png"),
        ".csv" => (CurveCsv.Write(chart), "text/csv; charset=utf-8"),
        _ => null,
    };

    private static IEnumerable<string> Known(Sheet sheet) => sheet.Instances.OfType<InstanceState>().Select(i => i.Instance.Id);

    private static string WhatIsMissing(InstanceState state) => state.Outcome.Missing is { Count: > 0 } missing
        ? string.Join("; ", missing.Select(m => $"{m.Input}: {m.Measure}")) : "take a calculation that plots curves";

    private static IResult NotThere(string path, string wrong, string right) => Answers.Faults([new(path, wrong, right)], status: StatusCodes.Status404NotFound);
}
