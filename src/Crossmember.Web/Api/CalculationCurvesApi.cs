using System.Text;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Api;

/// <summary>Curves of a calculation by itself, from inputs as <c>calc run</c> takes them.</summary>
public static class CalculationCurvesApi
{
    /// <param name="file"><c>curves.svg</c>, <c>curves.png</c> or <c>curves.csv</c>.</param>
    public static IResult Get(string id, string file, string? input, string? measure, string? picture, HttpContext context)
    {
        if (CalculationList.Find(id) is not { } calculation)
            return Answers.NotThere(id, $"there is no calculation '{id}'", $"nearest: {Nearest.To(id, CalculationList.All.Select(c => c.Id))}");
        if (Path.GetFileNameWithoutExtension(file) != "curves") return Answers.NotThere(file, $"'{file}' is no file of a calculation", "curves.svg, curves.png or curves.csv");
        var faults = new Faults();
        var (system, which) = CurveAnswer.Asked(measure, picture, faults);
        if (ArgumentReader.Read(calculation, Encoding.UTF8.GetBytes(input ?? "{}"), faults) is not { } arguments || faults.Any) return Answers.Faults(faults.List);
        var outcome = calculation.Run(arguments, true);
        var charts = CurveChart.Of(calculation.About.Title, new(Words.TheseInputs, outcome.Curves), null, system);
        if (charts.Count > 0) return CurveAnswer.Of(charts, which, file, $"{id}-{file}", context);
        var missing = outcome.Missing.Select(m => $"{m.Input}: {m.Measure}").ToList();
        return Answers.NotThere(file, $"'{id}' draws no curve from these inputs", missing.Count > 0 ? string.Join("; ", missing) : "take a calculation that plots curves");
    }
}
