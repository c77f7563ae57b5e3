using System.Text.Json;

namespace Crossmember.Engineering.Reading;

/// <summary>Opens a JSON text: size, encoding and syntax are checked here, content by the format's own reader.</summary>
public static class JsonText
{
    /// <summary>The firm limit of every format.</summary>
    public const int LargestBytes = 64 * 1024 * 1024;

    private static readonly JsonDocumentOptions s_options = new() { MaxDepth = 64 };

    /// <summary>The document, or null with one fault added.</summary>
    public static JsonDocument? Open(ReadOnlyMemory<byte> utf8, Faults faults)
    {
        if (utf8.Length > LargestBytes)
        {
            faults.Add("", $"the file has {utf8.Length} bytes", "64 MiB is the most");
            return null;
        }
        if (utf8.Span.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) utf8 = utf8[3..];
        try
        {
            return JsonDocument.Parse(utf8, s_options);
        }
        catch (JsonException e)
        {
            faults.Add("", $"not JSON at line {e.LineNumber + 1}, byte {e.BytePositionInLine + 1}", "repair the syntax there (NaN, comments and trailing commas are not JSON)");
            return null;
        }
    }
}
