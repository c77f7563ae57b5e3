using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.Decisions;

/// <summary>An item for which nothing is chosen yet, and why that matters now.</summary>
/// <param name="Trouble">Checks that say no and rest on it.</param>
/// <param name="Lead">The longest time any of its options takes to come, in seconds; 0 where none says.</param>
/// <param name="Waiting">Items with an option that needs something chosen here.</param>
public sealed record OpenQuestion(Slot Item, int Trouble, double Lead, IReadOnlyList<Slot> Waiting, IReadOnlyList<string> Why)
{
    /// <summary>What is undecided in a sheet: first what is in trouble, then what others wait for, then what takes longest to come.</summary>
    public static IReadOnlyList<OpenQuestion> Of(Sheet sheet, ItemMarks marks) =>
    [
        .. sheet.Build.Slots.Where(s => marks.IsUndecided(s.Id)).Select(s => Of(s, sheet.Build, marks))
            .OrderByDescending(q => q.Trouble > 0).ThenByDescending(q => q.Waiting.Count).ThenByDescending(q => q.Lead).ThenByDescending(q => q.Item.Weight),
    ];

    private static OpenQuestion Of(Slot item, Build build, ItemMarks marks)
    {
        var options = item.Options.Where(o => o.Id != Option.AsFound).Select(o => ResolvedOption.Of(item, o).Body).ToList();
        var all = marks.Trouble(item.Id);
        var (trouble, unknown) = (all.Count(f => f.Finding.Verdict == Verdict.Fail), all.Count(f => f.Finding.Verdict == Verdict.Unknown));
        var longest = options.Select(o => (Text: o.Lead, Seconds: o.Lead is { } lead ? LeadTime.Seconds(lead) ?? 0 : 0)).OrderByDescending(l => l.Seconds).FirstOrDefault();
        var waiting = build.Slots.Where(s => s.Id != item.Id && s.Options.Any(o => (ResolvedOption.Of(s, o).Body.Requires ?? []).Any(r => r.Slot == item.Id))).ToList();
        return new(item, trouble, longest.Seconds, waiting, [.. Reasons(item, options, (trouble, unknown), longest.Text, waiting)]);
    }

    private static IEnumerable<string> Reasons(Slot item, List<Option> options, (int Fails, int Unknowns) checks, string? lead, List<Slot> waiting)
    {
        if (checks.Fails > 0) yield return $"{Words.Count(checks.Fails, "check that says", "checks that say")} {Words.Of(Verdict.Fail)} {(checks.Fails == 1 ? "rests" : "rest")} on it";
        if (checks.Unknowns > 0) yield return $"{Words.Count(checks.Unknowns, "check that doesn't", "checks that don't")} know yet {(checks.Unknowns == 1 ? "rests" : "rest")} on it";
        if (waiting.Count > 0) yield return $"{string.Join(", ", waiting.Select(w => w.Title))} may need it";
        if (lead is not null) yield return $"up to {lead} to come";
        if (Prices(options) is { } prices) yield return prices;
        if (item.Grade is { Length: > 0 } grade) yield return $"graded {grade}";
    }

    private static string? Prices(List<Option> options)
    {
        var sums = options.Select(OptionFacts.Bought).OfType<Planning.Money>().OrderBy(m => m.Amount).ToList();
        return sums.Count == 0 ? null
            : sums[0].Amount == sums[^1].Amount ? Shown.Money(sums[0]) : $"{Shown.Money(sums[0])} to {Shown.Money(sums[^1])}";
    }
}
