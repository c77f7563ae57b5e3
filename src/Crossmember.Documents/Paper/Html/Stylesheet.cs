using System.Text.RegularExpressions;

namespace Crossmember.Documents.Paper.Html;

/// <summary>The look of a page: the desk's tokens and faces, and how the parts of a document are set.</summary>
internal static partial class Stylesheet
{
    private static readonly Lazy<string> s_desk = new(() => Tokens() + Resource("paper.css"));

    /// <summary>The faces lie beside the desk; here each is within the page.</summary>
    [GeneratedRegex("""url\("[^"]*/(?<name>[a-z]+)\.woff2"\)""", RegexOptions.ExplicitCapture)]
    private static partial Regex Faces();

    public static string Of(PageSize size) => s_desk.Value + $"@page {{ size: {size.Name}; margin: 14mm; }}\n";

    private static string Tokens() => Faces().Replace(Resource("tokens.css"), m => $"url(\"data:font/woff2;base64,{Convert.ToBase64String(Bytes($"{m.Groups["name"].Value}.woff2"))}\")");

    private static string Resource(string name)
    {
        using var reader = new StreamReader(typeof(Stylesheet).Assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }

    private static byte[] Bytes(string name)
    {
        using var stream = typeof(Stylesheet).Assembly.GetManifestResourceStream(name)!;
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
