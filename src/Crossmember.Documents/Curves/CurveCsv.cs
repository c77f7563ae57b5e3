using System.Globalization;
using System.Text;

namespace Crossmember.Documents.Curves;

/// <summary>All the points of a chart as comma-separated values (RFC 4180), numbers as exact as they are known.</summary>
public static class CurveCsv
{
    public static byte[] Write(CurveChart chart)
    {
        var text = new StringBuilder();
        Row(text, "curve", "build", chart.X.Title, chart.Y.Title);
        foreach (var line in chart.Lines.OrderBy(l => l.Then))
            for (var i = 0; i < line.X.Count; i++)
                Row(text, line.Name, line.Then ? chart.Then! : chart.Now, Exact(line.X[i]), Exact(line.Y[i]));
        // The mark at the front tells table programs that the units are written in UTF-8.
        return [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text.ToString())];
    }

    private static void Row(StringBuilder text, params ReadOnlySpan<string> fields)
    {
        for (var i = 0; i < fields.Length; i++) text.Append(i == 0 ? "" : ",").Append(Field(fields[i]));
        text.Append("\r\n");
    }

    private static string Exact(double value) => value.ToString("R", CultureInfo.InvariantCulture);

    /// <summary>A name that begins like a formula would be worked out by a table program: it is made a text.</summary>
    private static string Field(string field)
    {
        if (field.Length > 0 && "=+-@\t".Contains(field[0], StringComparison.Ordinal) && !double.TryParse(field, CultureInfo.InvariantCulture, out _)) field = "'" + field;
        return field.AsSpan().IndexOfAny(",\"\r\n") < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
