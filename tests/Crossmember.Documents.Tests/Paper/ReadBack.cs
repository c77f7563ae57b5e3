using System.Text.RegularExpressions;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Paper.Html;
using Crossmember.Documents.Paper.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using PageSize = Crossmember.Documents.Paper.PageSize;

namespace Crossmember.Documents.Tests.Paper;

/// <summary>A document written and read back by a reader that is not ours (PdfPig).</summary>
internal sealed partial class ReadBack : IDisposable
{
    public static readonly DateTimeOffset Instant = new(2026, 11, 26, 12, 0, 0, TimeSpan.Zero);

    private readonly PdfDocument _pdf;

    public ReadBack(byte[] content) => (Content, _pdf) = (content, PdfDocument.Open(content));

    public byte[] Content { get; }

    public PdfDocument Pdf => _pdf;

    public IReadOnlyList<Page> Pages => [.. _pdf.GetPages()];

    public static Document Of(params Block[] blocks) => new("A document", "What runs along the top", "What stands at the foot", Instant, blocks);

    public static ReadBack Written(Document document, PageSize? size = null) => new(Bytes(document, size));

    public static byte[] Bytes(Document document, PageSize? size = null) => PdfWriter.Write(document, size ?? PageSize.A4, null, TestContext.Current.CancellationToken).Content;

    public static byte[] Html(Document document, PageSize? size = null) => HtmlWriter.Write(document, size ?? PageSize.A4, null, TestContext.Current.CancellationToken);

    public static ReadBack Written(params Block[] blocks) => Written(Of(blocks));

    /// <summary>The words of a page between its head and its foot, in the order they were drawn.</summary>
    public static IReadOnlyList<string> Body(Page page)
    {
        var words = new List<string>();
        Letter? last = null;
        foreach (var letter in page.Letters.Where(l => l.StartBaseLine.Y > PageSize.Margin + 14 && l.StartBaseLine.Y < page.Height - PageSize.Margin - 14))
        {
            // A word ends where a space stands, another line begins, or the next letter stands off by a tenth of its size.
            var goesOn = last is not null && Math.Abs(last.EndBaseLine.Y - letter.StartBaseLine.Y) < 0.1 && Math.Abs(letter.StartBaseLine.X - last.EndBaseLine.X) < 0.1 * letter.PointSize;
            if (string.IsNullOrWhiteSpace(letter.Value)) last = null;
            else
            {
                if (goesOn) words[^1] += letter.Value;
                else words.Add(letter.Value);
                last = letter;
            }
        }
        return words;
    }

    public IReadOnlyList<string> Words => [.. Pages.SelectMany(Body)];

    /// <summary>Figures as they are printed: digits with what stands within a number.</summary>
    public static IEnumerable<string> Numbers(IEnumerable<string> words) => words.SelectMany(w => Number().Matches(w).Select(m => m.Value));

    public void Dispose() => _pdf.Dispose();

    [GeneratedRegex(@"\d(?:[\d,./]*\d)?")]
    private static partial Regex Number();
}
