using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>Turns blocks into strips.</summary>
internal sealed class BlockLayout(Typesetter type, Room room)
{
    private const double Text = 9.5, Hanging = 12, Inset = 10, AfterBlock = 7;

    private static readonly Style s_body = new(Text, Ink.Text), s_notice = new(9, Ink.Text);

    private static readonly (double Size, double Before)[] s_headings = [(19, 0), (13, 15), (10.5, 9)];

    private readonly Lines _lines = new(type);

    public IEnumerable<Strip> Of(Block block) => block switch
    {
        Block.Heading h => Heading(h),
        Block.Paragraph p => Spaced(Flow(p.Text, s_body, 0)),
        Block.Bullets b => Spaced(b.Items.SelectMany(i => Bullet(i, s_body, 0))),
        Block.Notice n => Notice(n),
        Block.Facts f => Spaced(new FactsLayout(_lines, room).Of(f)),
        Block.Table t => new TableLayout(_lines, room).Of(t),
        Block.Figure f => new FigureLayout(_lines, room).Of(f),
        Block.TrueScale t => new TrueScaleLayout(_lines, room).Of(t),
        Block.Together t => Joined([.. t.Blocks.SelectMany(Of)]),
        _ => [new(0, (_, _) => { }) { NewPage = true, WithNext = true }],
    };

    private IEnumerable<Strip> Heading(Block.Heading heading)
    {
        var (size, before) = s_headings[Math.Clamp(heading.Level, 1, s_headings.Length) - 1];
        var strips = Flow(heading.Words, new(size, Ink.Text, true), 0).ToList();
        yield return strips[0] with { Before = before, WithNext = true };
        foreach (var strip in strips.Skip(1)) yield return strip with { WithNext = true };
        yield return new(size * 0.3, (_, _) => { }) { WithNext = true };
    }

    /// <summary>A strip for each line; the first two and the last two stay together, so that no line stands alone.</summary>
    private IEnumerable<Strip> Flow(Text text, Style style, double indent)
    {
        var lines = _lines.Wrap(text, style, room.Width - indent);
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            yield return new(style.Leading, (pencil, y) => pencil.Line(line, indent, y + style.Ascent)) { WithNext = i < lines.Count - 1 && (i == 0 || i == lines.Count - 2) };
        }
    }

    private IEnumerable<Strip> Bullet(Text item, Style style, double indent)
    {
        var first = true;
        foreach (var strip in Flow(item, style, indent + Hanging))
        {
            var marked = first;
            yield return strip with
            {
                Draw = (pencil, y) =>
                {
                    if (marked) pencil.Box(indent + 2, y + (style.Size * 0.62), 2.6, 2.6, Ink.Quiet);
                    strip.Draw(pencil, y);
                },
            };
            first = false;
        }
    }

    /// <summary>A bar along the left edge holds it together wherever a page ends.</summary>
    private IEnumerable<Strip> Notice(Block.Notice notice)
    {
        var inks = Flow(Run.Strong(notice.Title), s_notice with { Bold = true, Ink = s_bar }, Inset)
            .Concat(notice.Items.SelectMany(i => notice.Items.Count > 1 ? Bullet(i, s_notice, Inset) : Flow(i, s_notice, Inset))).ToList();
        for (var i = 0; i < inks.Count; i++)
        {
            var strip = inks[i];
            yield return strip with
            {
                Before = i == 0 ? AfterBlock : 0, WithNext = strip.WithNext || i == 0,
                Draw = (pencil, y) =>
                {
                    pencil.Box(0, y, 3, strip.Height, s_bar);
                    strip.Draw(pencil, y);
                },
            };
        }
        yield return Strip.Gap(AfterBlock);
    }

    private static readonly Ink s_bar = Ink.OfCurve(0);

    private static IEnumerable<Strip> Spaced(IEnumerable<Strip> strips) => strips.Append(Strip.Gap(AfterBlock));

    private static IEnumerable<Strip> Joined(List<Strip> strips) => strips.Select((s, i) => i < strips.Count - 1 ? s with { WithNext = true } : s);
}
