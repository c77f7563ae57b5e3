using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Api;

/// <summary>A chart as a file, whoever drew it.</summary>
public static class CurveAnswer
{
    private const string Endings = "svg, png or csv";

    /// <summary>The units and the picture that are asked for, from 1.</summary>
    public static (MeasureSystem System, int Which) Asked(string? measure, string? picture, Faults faults)
    {
        if (measure is not (null or "us" or "metric")) faults.Add("measure", $"'{measure}' is no measure", "us or metric");
        if (!int.TryParse(picture ?? "1", out var which)) faults.Add("picture", $"'{picture}' is no number", "which of the pictures, from 1");
        return (measure == "metric" ? MeasureSystem.Metric : MeasureSystem.UsCustomary, which);
    }

    /// <param name="file">As it was asked for; its ending says what is written.</param>
    /// <param name="name">As it is saved.</param>
    public static IResult Of(IReadOnlyList<CurveChart> charts, int which, string file, string name, HttpContext context)
    {
        if (which < 1 || which > charts.Count) return Answers.NotThere("picture", $"there is no picture {which}", $"1 to {charts.Count}");
        return Written(charts[which - 1], Path.GetExtension(file)) is var (content, type) ? SafeFiles.Send(content, type, name, context)
            : Answers.NotThere(file, $"'{Path.GetExtension(file)}' is no kind of file that a curve is written as", Endings);
    }

    private static (byte[] Content, string Type)? Written(CurveChart chart, string ending) => ending switch
    {
        ".svg" => (CurveSvg.Write(chart, PictureSize.Wide(chart)), "image/svg+xml"),
        ".png" => (CurvePng.Write(chart, PictureSize.Wide(chart)), "image/png"),
        ".csv" => (CurveCsv.Write(chart), "text/csv; charset=utf-8"),
        _ => null,
    };
}
