using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>Every value of a sheet as a line, under the item it belongs to.</summary>
public sealed class SheetLines
{
    private readonly Sheet _sheet;
    private readonly RowNames _names;
    private readonly HomeItems _homes;
    private readonly IReadOnlyDictionary<string, IReadOnlySet<string>> _waiting;
    private readonly Dictionary<int, (Slot Slot, Stated Stated)> _stated = [];
    private readonly ILookup<string, SheetLine> _byItem;

    public SheetLines(Sheet sheet)
    {
        (_sheet, _names, _homes, _waiting) = (sheet, new(sheet.Plan, sheet.Build), new(sheet), Unsettled.ByKey(sheet));
        foreach (var option in sheet.InEffect.OfType<CompiledOption>())
            foreach (var (key, stated) in option.Values) _stated.TryAdd(key, (option.Slot, stated));
        All = [.. Enumerable.Range(0, sheet.Plan.Space.KeyCount).Where(k => sheet.Keys[k].Exists).Select(Line)];
        _byItem = All.ToLookup(l => l.Item.Id, StringComparer.Ordinal);
    }

    /// <summary>One line for each key of the sheet, in the order of the parameter table.</summary>
    public IReadOnlyList<SheetLine> All { get; }

    public RowNames Names => _names;

    /// <summary>The lines of an item; what one statement says of several places stands as one.</summary>
    public IReadOnlyList<SheetLine> Of(string item) => Together(_byItem[item]);

    /// <summary>What nobody states and checks wait for, the most wanted first.</summary>
    public IReadOnlyList<SheetLine> Missing(string? item = null) =>
        [.. Together((item is null ? All : _byItem[item]).Where(l => l.Waiting > 0)).OrderByDescending(l => l.Waiting).ThenBy(l => l.Key, StringComparer.Ordinal)];

    public SheetLine? Find(string key) => _sheet.Plan.Space.Expand(key) is [var first, ..] ? _sheet.Keys[first].Exists ? All.FirstOrDefault(l => l.Key == _sheet.Plan.Space.KeyName(first)) : Line(first) : null;

    /// <summary>The calculation that says a value, also where a stated value hides what it says; null where none does.</summary>
    public InstanceState? Publisher(SheetLine line) =>
        _sheet.Plan.Space.KeyId(line.Key) is >= 0 and var key ? _sheet.Instances.FirstOrDefault(i => i is not null && i.Instance.Publishes.Contains(key)) : null;

    /// <summary>Lines whose value, origin and meaning are one are shown once, with all their places. Gears and axles are measured one by one; wheels are alike until somebody says otherwise.</summary>
    public IReadOnlyList<SheetLine> Together(IEnumerable<SheetLine> lines) =>
    [
        .. lines.GroupBy(l => (l.Pattern, l.Item, l.State.Source, l.State.Value, l.Stated, l.Origin, Alone: l.IsMissing && !l.Key.StartsWith("wheel.", StringComparison.Ordinal) ? l.Key : "", Waits: l.Waiting > 0, l.State.Basis))
            .Select(g => g.Count() == 1 ? g.First() : g.First() with { Keys = [.. g.Select(l => l.Key)], Where = Places([.. g.Select(l => l.Where)]), Waiting = Checks(g) }),
    ];

    private SheetLine Line(int key)
    {
        var name = _sheet.Plan.Space.KeyName(key);
        var said = _names.Key(name);
        var found = _stated.TryGetValue(key, out var s);
        return new([name], said.Title, said.Where, _sheet.Plan.Space.PatternOf(key), _homes.Of(key), _sheet.Keys[key],
            found ? s.Stated : null, found ? StatedAt.Find(s.Slot, s.Stated) : null, _waiting.TryGetValue(name, out var checks) ? checks.Count : 0);
    }

    private int Checks(IEnumerable<SheetLine> lines) =>
        lines.SelectMany(l => _waiting.TryGetValue(l.Key, out var checks) ? checks : (IEnumerable<string>)[]).Distinct(StringComparer.Ordinal).Count();

    private static string Places(IReadOnlyList<string> places) => places.Count > 2 ? $"in all {places.Count} places" : string.Join(" and ", places.Where(p => p.Length > 0));
}
