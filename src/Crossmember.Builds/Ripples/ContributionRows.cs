using System.Collections.Immutable;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Planning;

namespace Crossmember.Builds.Ripples;

/// <summary>Rows of what slots bring themselves: masses, loads, cost, hours, originality, tasks.</summary>
internal static class ContributionRows
{
    public static IEnumerable<RippleRow> Of(Sheet from, Sheet to, Causes causes) =>
    [
        .. Elements(from, to, RowKind.Mass, o => o.Body.Masses, m => m.Id, m => new(m.Kilograms, null, "kg", null)),
        .. Elements(from, to, RowKind.Load, o => o.Body.Loads, l => l.Id, l => new(l.Rating, null, l.Unit, l.Rating is null ? Verdict.Unknown : null)),
        .. Elements(from, to, RowKind.Task, o => o.Body.Tasks, t => t.Id, t => new(t.Duration, t.Links, t.Duration is null ? null : "h", null)),
        .. Totals(from, to, causes),
        .. Sums(from.Totals.Cost, to.Totals.Cost, RowKind.Cost, SideOf, c => causes.OfSlots(o => Causes.Prices(o, c))),
        .. Sums(from.Totals.Hours, to.Totals.Hours, RowKind.Hours, h => new(h, null, "h", null), t => causes.OfSlots(o => Causes.Hours(o, t))),
    ];

    private static IEnumerable<RippleRow> Elements<T>(
        Sheet from, Sheet to, RowKind kind, Func<CompiledOption, ImmutableArray<T>?> list, Func<T, string> id, Func<T, Side> side)
        where T : class
    {
        for (var s = 0; s < from.InEffect.Length; s++)
        {
            CompiledOption? x = from.InEffect[s], y = to.InEffect[s];
            if (ReferenceEquals(x, y)) continue;
            ImmutableArray<T> a = x is null ? [] : list(x) ?? [], b = y is null ? [] : list(y) ?? [];
            foreach (var name in a.Select(id).Union(b.Select(id)))
            {
                var one = a.FirstOrDefault(i => id(i) == name) is { } i1 ? side(i1) : null;
                var other = b.FirstOrDefault(i => id(i) == name) is { } i2 ? side(i2) : null;
                if (Row(kind, $"{from.Plan.SlotNames[s]}/{name}", one, other, ["slot:" + from.Plan.SlotNames[s]]) is { } row) yield return row;
            }
        }
    }

    private static IEnumerable<RippleRow> Totals(Sheet from, Sheet to, Causes causes)
    {
        Totals a = from.Totals, b = to.Totals;
        RippleRow?[] rows =
        [
            Row(RowKind.Mass, "total", Mass(a), Mass(b), causes.OfMasses()),
            Row(RowKind.Cost, "total", SideOf(a.CostTotal), SideOf(b.CostTotal), causes.OfSlots(o => Causes.Prices(o, null))),
            Row(RowKind.Cost, "labour", Labour(a), Labour(b), causes.OfSlots(o => Causes.Hours(o, null))),
            Row(RowKind.Hours, "total", new(a.HoursTotal, null, "h", null), new(b.HoursTotal, null, "h", null), causes.OfSlots(o => Causes.Hours(o, null))),
            Row(RowKind.Originality, "total", Originality(a), Originality(b), causes.OfSlots(Causes.Originality)),
            .. Loads(from, to, causes),
        ];
        return rows.OfType<RippleRow>();
    }

    private static Side Mass(Totals t) => new(t.Mass.Kilograms, null, "kg", t.Mass.Kilograms is null ? Verdict.Unknown : null);

    private static Side? Labour(Totals t) => t.Labour.Count == 0 ? null : SideOf(t.Labour.Values.Aggregate((x, y) => x + y));

    private static Side Originality(Totals t) => new(t.Originality, null, "1", t.Originality is null ? Verdict.Unknown : null);

    private static Side SideOf(Money money) => new((double)money.Amount, null, money.Currency, null);

    /// <summary>One total per unit: watts and amperes do not add without a voltage.</summary>
    private static IEnumerable<RippleRow?> Loads(Sheet from, Sheet to, Causes causes)
    {
        foreach (var unit in new[] { "W", "A" })
            yield return Row(RowKind.Load, unit == "W" ? "total" : "total current", LoadSum(from, unit), LoadSum(to, unit),
                causes.OfSlots(o => Causes.Text<Slots.LoadItem>(o.Body.Loads is { } lines ? [.. lines.Where(l => l.Unit == unit)] : null, l => $"{l.Id} {l.Rating:R}")));
    }

    private static Side? LoadSum(Sheet sheet, string unit)
    {
        var loads = sheet.InEffect.OfType<CompiledOption>().SelectMany(o => o.Body.Loads ?? []).Where(l => l.Unit == unit).ToList();
        return loads.Count == 0 ? null : loads.Exists(l => l.Rating is null) ? new(null, null, unit, Verdict.Unknown) : new(loads.Sum(l => l.Rating), null, unit, null);
    }

    private static IEnumerable<RippleRow> Sums<T>(
        IReadOnlyDictionary<string, T> a, IReadOnlyDictionary<string, T> b, RowKind kind, Func<T, Side> side, Func<string, IReadOnlyList<string>> because)
    {
        foreach (var id in a.Keys.Union(b.Keys).Order(StringComparer.Ordinal))
            if (Row(kind, id, a.TryGetValue(id, out var x) ? side(x) : null, b.TryGetValue(id, out var y) ? side(y) : null, because(id)) is { } row)
                yield return row;
    }

    private static RippleRow? Row(RowKind kind, string id, Side? a, Side? b, IReadOnlyList<string> because)
    {
        if (a is null && b is null) return null;
        var state = a is null ? RowState.Appeared : b is null ? RowState.Gone : RowState.Changed;
        return state == RowState.Changed && !Ripple.Differ(a!.Number, b!.Number) && a.Text == b.Text && a.Unit == b.Unit ? null : new(kind, id, state, a, b, because);
    }
}
