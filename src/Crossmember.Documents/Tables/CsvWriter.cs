using System.Globalization;
using System.Text;

namespace Crossmember.Documents.Tables;

/// <summary>Comma-separated values (RFC 4180), row by row.</summary>
public sealed class CsvWriter
{
    private readonly StringBuilder _text = new();

    public CsvWriter Row(params ReadOnlySpan<string> fields)
    {
        for (var i = 0; i < fields.Length; i++) _text.Append(i == 0 ? "" : ",").Append(Field(fields[i]));
        _text.Append("\r\n");
        return this;
    }

    /// <summary>The file; the mark at its front tells table programs that it is written in UTF-8.</summary>
    public byte[] ToFile() => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(_text.ToString())];

    /// <summary>A name that begins like a formula would be worked out by a table program: it is made a text.</summary>
    private static string Field(string field)
    {
        if (field.Length > 0 && "=+-@\t".Contains(field[0], StringComparison.Ordinal) && !double.TryParse(field, CultureInfo.InvariantCulture, out _)) field = "'" + field;
        return field.AsSpan().IndexOfAny(",\"\r\n") < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
    }
}
