using Crossmember.Builds.Pasting;
using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features.Starting;

/// <summary>A pasted parts list on its way into a build: what is thought of its columns and where each row is to go, all of which can be said otherwise.</summary>
public sealed class PastedList
{
    /// <summary>More than this at once is no parts list of a vehicle.</summary>
    public const int MostRows = 20_000;

    public const string New = "new", PriceList = "list", Leave = "leave", Item = "item:";

    private const int Step = 250;

    private readonly CellTable _table;
    private readonly Dictionary<int, string> _said = [];
    private readonly List<string?> _matched = [];
    private readonly List<PastedPart> _parts = [];

    private PastedList(CellTable table, HeaderGuess guess) => (_table, Guess) = (table, guess);

    public HeaderGuess Guess { get; private set; }

    public IReadOnlyList<PastedPart> Parts => _parts;

    /// <summary>Where a row goes that no item was found for.</summary>
    public string Unmatched { get; set; } = PriceList;

    public IReadOnlyList<int> Ready => [.. Enumerable.Range(0, _parts.Count).Where(i => _parts[i].IsReady && Code(i) != Leave)];

    public int NeedALook => _parts.Count(p => !p.IsReady);

    /// <summary>Reads a pasted text. Null where it holds no row.</summary>
    /// <param name="books">The currency of the shop; null: nobody has said it.</param>
    /// <param name="progress">Rows read so far, and of how many.</param>
    public static PastedList? Read(string text, Build build, string? books, string massUnit, IProgress<(int, int)> progress, CancellationToken cancelled)
    {
        var table = CellReader.Read(text);
        if (table.Rows.Count == 0) return null;
        var list = new PastedList(table, ColumnGuessing.Of(table));
        list.Understand(build, books, massUnit, progress, cancelled);
        return list;
    }

    /// <summary>Reads the rows anew with other columns; what was said of where rows go stays.</summary>
    public void Understand(HeaderGuess guess, Build build, string? books, string massUnit)
    {
        Guess = guess;
        Understand(build, books, massUnit, new Progress<(int, int)>(), CancellationToken.None);
    }

    /// <summary>One column read as another kind; the one that was of that kind is then left out.</summary>
    public HeaderGuess With(int column, ColumnKind kind) =>
        Guess with { Columns = [.. Guess.Columns.Select((c, i) => i == column ? c with { Kind = kind } : kind != ColumnKind.Ignore && c.Kind == kind ? c with { Kind = ColumnKind.Ignore } : c)] };

    public HeaderGuess With(int column, DecimalMark mark) => Guess with { Columns = [.. Guess.Columns.Select((c, i) => i == column ? c with { Mark = mark } : c)] };

    /// <summary>With or without a first row that names the columns.</summary>
    public HeaderGuess WithHeader(bool header) =>
        Guess with { HasHeader = header, Columns = [.. Guess.Columns.Select((c, i) => c with { Header = header && i < _table.Rows[0].Cells.Count ? _table.Rows[0].Cells[i] : null })] };

    public void Say(int row, string code) => _said[row] = code;

    /// <summary>Where a row goes, as the list of places names it.</summary>
    public string Code(int row) => _said.GetValueOrDefault(row) ?? (_matched[row] is { } slot ? Item + slot : Unmatched);

    public IReadOnlyList<(PastedPart, Destination)> Going => [.. Ready.Select(i => (_parts[i], To(i)))];

    /// <summary>Items for which one option of all their rows could not be weighed, since only some rows say a weight.</summary>
    public int PartlyWeighed => Going.Where(g => g.Item2 is Destination.Item).GroupBy(g => g.Item2).Count(g => g.Any(p => p.Item1.Mass is not null) && g.Any(p => p.Item1.Mass is null));

    /// <summary>What stays when the ready rows are in: the headers and the rows that go nowhere or need a look; empty where none does.</summary>
    public string Rest()
    {
        var going = Ready.ToHashSet();
        var staying = Enumerable.Range(0, _parts.Count).Where(i => !going.Contains(i)).Select(i => _parts[i].Source).ToList();
        return staying.Count == 0 ? "" : CellWriter.Write(Guess.HasHeader ? [_table.Rows[0].Cells, .. staying] : staying, _table.Separator ?? '\t');
    }

    private Destination To(int row) => Code(row) switch
    {
        New => new Destination.NewItem(),
        PriceList => new Destination.PriceList(),
        var code when code.StartsWith(Item, StringComparison.Ordinal) => new Destination.Item(code[Item.Length..]),
        _ => new Destination.Nowhere(),
    };

    private void Understand(Build build, string? books, string massUnit, IProgress<(int, int)> progress, CancellationToken cancelled)
    {
        var (reader, match) = (new PartsReader(Guess, books, massUnit), new ItemMatch(build));
        var rows = _table.Rows.Skip(Guess.HasHeader ? 1 : 0).ToList();
        _parts.Clear();
        _matched.Clear();
        foreach (var row in rows)
        {
            cancelled.ThrowIfCancellationRequested();
            var part = reader.Read(row);
            _parts.Add(part);
            _matched.Add(match.Of(part.Place, part.Title)?.Id);
            if (_parts.Count % Step == 0) progress.Report((_parts.Count, rows.Count));
        }
    }
}
