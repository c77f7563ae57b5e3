using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.Decisions;

/// <summary>One side of a comparison of up to <see cref="Most"/>.</summary>
public sealed record Column(string Title, Sheet Sheet, bool IsNow)
{
    public const int Most = 4;

    /// <summary>Checks whose verdict is not the same on every side, worst first; null where a side does not have the check.</summary>
    public static IReadOnlyList<(string Id, IReadOnlyList<Finding?> Sides)> Differing(IReadOnlyList<Column> columns)
    {
        var sides = columns.Select(c => c.Sheet.Findings().ToDictionary(f => f.Id, f => f.Finding, StringComparer.Ordinal)).ToList();
        return
        [
            .. sides.SelectMany(s => s.Keys).Distinct(StringComparer.Ordinal)
                .Select(id => (Id: id, Sides: (IReadOnlyList<Finding?>)[.. sides.Select(s => s.GetValueOrDefault(id))]))
                .Where(r => r.Sides.Select(f => f?.Verdict).Distinct().Count() > 1 && r.Sides.Any(f => f is { Verdict: not Verdict.Pass }))
                .OrderByDescending(r => r.Sides.Max(f => f?.Verdict)).ThenBy(r => r.Id, StringComparer.Ordinal),
        ];
    }

    /// <summary>Items for which the sides do not choose the same.</summary>
    public static IEnumerable<(Slot Item, IReadOnlyList<string> Options)> Choices(IReadOnlyList<Column> columns) =>
        from item in columns[0].Sheet.Build.Slots
        let options = columns.Select(c => In(c.Sheet, item)).ToList()
        where options.Distinct().Count() > 1
        select (item, (IReadOnlyList<string>)options);

    private static string In(Sheet sheet, Slot item) =>
        sheet.Choices.TakenBy.TryGetValue(item.Id, out var taker) ? $"comes with {sheet.Build.Find(taker)?.Title ?? taker}" : Words.OptionTitle(item, sheet.Choices[item.Id].Id);
}
