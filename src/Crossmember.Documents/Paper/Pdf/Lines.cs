using System.Buffers;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>A word in its place on a line.</summary>
internal readonly record struct Word(string Letters, Style Style, double X, Verdict? Mark);

/// <summary>One line of wrapped text.</summary>
internal sealed record TextLine(IReadOnlyList<Word> Words, double Width);

/// <summary>Wraps runs into lines.</summary>
internal sealed class Lines(Typesetter type)
{
    /// <summary>Where a word that is wider than the line is parted, before it is parted anywhere.</summary>
    private static readonly SearchValues<char> s_seams = SearchValues.Create("-/.,_=[](");

    private const double Slack = 0.01; // points, for sums of fractions

    private readonly record struct Atom(string Letters, Style Style, double Space, Verdict? Mark, double Width);

    /// <summary>The widest word: no column is made narrower if that can be helped.</summary>
    public double Narrowest(Text text, Style style) => Whole(Atoms(text, style)).Select(w => w.Sum(a => a.Width)).DefaultIfEmpty().Max();

    /// <summary>The width of the whole text on one line.</summary>
    public double Widest(Text text, Style style) => text.Plain.Contains('\n', StringComparison.Ordinal) ? Wrap(text, style, double.MaxValue).Max(l => l.Width) : Atoms(text, style).Sum(a => a.Space + a.Width);

    public IReadOnlyList<TextLine> Wrap(Text text, Style style, double width)
    {
        var lines = new List<TextLine>();
        var line = new List<Word>();
        double x = 0;
        void End()
        {
            lines.Add(new(line, x));
            (line, x) = ([], 0);
        }
        void Put(Atom atom)
        {
            if (line.Count > 0 && x + atom.Width > width + Slack) End();
            line.Add(new(atom.Letters, atom.Style, x, atom.Mark));
            x += atom.Width;
        }
        foreach (var word in Whole(Atoms(text, style)))
        {
            if (word[0].Letters == "\n")
            {
                End();
                continue;
            }
            if (line.Count > 0 && x + word[0].Space + word.Sum(a => a.Width) > width + Slack) End();
            if (line.Count > 0) x += word[0].Space;
            foreach (var piece in word.SelectMany(a => Parted(a, width))) Put(piece);
        }
        if (line.Count > 0 || lines.Count == 0) End();
        return lines;
    }

    /// <summary>What stands together without a space, such as a word in bold and the comma after it, is one word.</summary>
    private static IEnumerable<List<Atom>> Whole(IEnumerable<Atom> atoms)
    {
        var word = new List<Atom>();
        foreach (var atom in atoms)
        {
            if (word.Count > 0 && (atom.Space > 0 || atom.Letters == "\n" || word[0].Letters == "\n"))
            {
                yield return word;
                word = [];
            }
            word.Add(atom);
        }
        if (word.Count > 0) yield return word;
    }

    /// <summary>Words with the space before them; a verdict and its shape are one.</summary>
    private IEnumerable<Atom> Atoms(Text text, Style style)
    {
        var spaced = false;
        foreach (var run in text.Runs)
        {
            var own = style with { Bold = style.Bold || run.Bold, Ink = run.Mark is { } mark ? VerdictShape.InkOf(mark) : run.Quiet ? Ink.Quiet : style.Ink };
            foreach (var word in run.Mark is null ? Split(run.Words) : [run.Words])
            {
                if (word == " ") { spaced = true; continue; }
                if (word == "\n") { yield return new("\n", own, 0, null, 0); spaced = false; continue; }
                var printed = Typesetter.Printable(word);
                var shape = run.Mark is null ? 0 : VerdictShape.Room(own.Size);
                yield return new(printed, own, spaced ? type.Width(" ", own) : 0, run.Mark, type.Width(printed, own) + shape);
                spaced = false;
            }
        }
    }

    /// <summary>Words, single spaces and line ends.</summary>
    private static IEnumerable<string> Split(string words)
    {
        var from = 0;
        for (var i = 0; i <= words.Length; i++)
        {
            if (i < words.Length && words[i] is not (' ' or '\n' or '\t')) continue;
            if (i > from) yield return words[from..i];
            if (i < words.Length) yield return words[i] == '\n' ? "\n" : " ";
            from = i + 1;
        }
    }

    /// <summary>A word that no line can hold, in pieces: at a seam if there is one, else where it must be.</summary>
    private IEnumerable<Atom> Parted(Atom atom, double width)
    {
        while (atom.Width > width && atom.Letters.Length > 1 && atom.Mark is null)
        {
            var fits = 1;
            while (fits < atom.Letters.Length - 1 && type.Width(atom.Letters[..(fits + 1)], atom.Style) <= width) fits++;
            var seam = atom.Letters.AsSpan(0, fits).LastIndexOfAny(s_seams) + 1;
            var cut = seam > fits / 3 ? seam : fits;
            if (cut < atom.Letters.Length && char.IsLowSurrogate(atom.Letters[cut])) cut = Math.Max(1, cut - 1);
            yield return atom with { Letters = atom.Letters[..cut], Width = type.Width(atom.Letters[..cut], atom.Style) };
            // Two pieces touch: what follows begins a line, because with its first letter this one would be too wide.
            atom = atom with { Letters = atom.Letters[cut..], Space = 0, Width = type.Width(atom.Letters[cut..], atom.Style) };
        }
        yield return atom;
    }
}
