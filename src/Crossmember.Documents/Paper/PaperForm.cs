using Crossmember.Documents.Paper.Html;
using Crossmember.Documents.Paper.Pdf;

namespace Crossmember.Documents.Paper;

/// <summary>What a document is written as.</summary>
public sealed record PaperForm(string Ending, string MediaType)
{
    public static readonly PaperForm Pdf = new(".pdf", "application/pdf");

    public static readonly PaperForm Html = new(".html", "text/html; charset=utf-8");

    /// <summary>Every ending, as it is told to somebody who chose another.</summary>
    public const string Endings = ".pdf or .html";

    /// <summary>By the ending of a file's name, or null.</summary>
    public static PaperForm? Of(string file) => Path.GetExtension(file).ToLowerInvariant() switch { ".pdf" => Pdf, ".html" => Html, _ => null };

    /// <param name="progress">Told as it goes; long documents take seconds.</param>
    public Printed Write(Document document, PageSize size, IProgress<Step>? progress = null, CancellationToken cancel = default) =>
        this == Pdf ? PdfWriter.Write(document, size, progress, cancel) : new(HtmlWriter.Write(document, size, progress, cancel), null);
}

/// <summary>A document as it was written.</summary>
/// <param name="Pages">Null where it has none.</param>
public sealed record Printed(byte[] Content, int? Pages);
