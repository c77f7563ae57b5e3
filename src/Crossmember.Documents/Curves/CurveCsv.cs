using System.Globalization;
using Crossmember.Documents.Tables;

namespace Crossmember.Documents.Curves;

/// <summary>All the points of a chart as comma-separated values, numbers as exact as they are known.</summary>
public static class CurveCsv
{
    public static byte[] Write(CurveChart chart)
    {
        var csv = new CsvWriter().Row("curve", "build", chart.X.Title, chart.Y.Title);
        foreach (var line in chart.Lines.OrderBy(l => l.Then))
            for (var i = 0; i < line.X.Count; i++)
                csv.Row(line.Name, line.Then ? chart.Then! : chart.Now, Exact(line.X[i]), Exact(line.Y[i]));
        return csv.ToFile();
    }

    private static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
