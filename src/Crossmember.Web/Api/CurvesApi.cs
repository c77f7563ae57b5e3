using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;
using Microsoft.AspNetCore.Mvc;

namespace Crossmember.Web.Api;

/// <summary>Curves of a build as files: drawing, picture or table.</summary>
public static class CurvesApi
{
    /// <param name="file">Instance id and ending, as in <c>driveline.speed-curves[range=high].svg</c>; a plain id draws all its instances together.</param>
    public static IResult Get(string id, string file, [FromQuery(Name = "in")] string? scenario, string? against, string? measure, string? picture, HttpContext context, ShopDesk desk)
    {
        if (desk.Open(id) is not { } open) return Answers.NoBuild(id);
        var faults = new Faults();
        var comparing = desk.Shop.Comparing(open);
        var now = (scenario ?? comparing.Default(faults)) is { } name ? comparing.Sheet(name, faults) : null;
        var then = against is null ? null : comparing.Sheet(against, faults);
        var (system, which) = CurveAnswer.Asked(measure, picture, faults);
        if (faults.Any || now is null) return Answers.Faults(faults.List);

        var instance = Path.GetFileNameWithoutExtension(file);
        if (SheetCurves.Of(now, then, instance, system) is not { } charts) return Answers.NotThere(file, $"there is no '{instance}' in '{now.Scenario}'", $"nearest: {Nearest.To(instance, Known(now))}");
        if (charts.Count == 0) return Answers.NotThere(file, $"'{instance}' draws no curve here", WhatIsMissing(now, instance));
        return CurveAnswer.Of(charts, which, file, $"{id}-{file}", context);
    }

    private static IEnumerable<string> Known(Sheet sheet) => sheet.Instances.OfType<InstanceState>().Select(i => i.Instance.Id);

    private static string WhatIsMissing(Sheet sheet, string instance) => sheet.Instances.OfType<InstanceState>().Where(i => i.Instance.Id == instance || i.Instance.Calculation.Id == instance)
            .SelectMany(i => i.Outcome.Missing).Distinct().ToList() is { Count: > 0 } missing
        ? string.Join("; ", missing.Select(m => $"{m.Input}: {m.Measure}")) : "take a calculation that plots curves";
}
