using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features.Decisions;

namespace Crossmember.Web.Features;

/// <summary>An option that would settle a finding, together with those that it needs.</summary>
/// <param name="With">What else would have to be chosen, in words.</param>
/// <param name="Worse">Verdicts that it would spoil elsewhere.</param>
public sealed record Remedy(Slot Item, string Option, IReadOnlyList<string> With, int Worse)
{
    private static readonly IReadOnlyDictionary<string, IReadOnlyList<Remedy>> s_none = new Dictionary<string, IReadOnlyList<Remedy>>();

    /// <summary>By finding id, those that spoil least elsewhere first. Every option of the items behind the findings is tried once.</summary>
    /// <param name="scenario">Whose sheet it is; null (as found, approved): nothing can be chosen there.</param>
    /// <param name="except">An item that is to stay as it is.</param>
    public static IReadOnlyDictionary<string, IReadOnlyList<Remedy>> For(Sheet sheet, Scenario? scenario, IReadOnlyCollection<SheetFinding> findings, string? except = null)
    {
        if (scenario is null || findings.Count == 0) return s_none;
        var marks = ItemMarks.Of(sheet, scenario);
        var settled = findings.ToDictionary(f => f.Id, _ => new List<Remedy>(), StringComparer.Ordinal);
        foreach (var item in findings.SelectMany(marks.Behind).Distinct(StringComparer.Ordinal).Where(i => i != except))
        {
            var slot = sheet.Build.Find(item)!;
            foreach (var option in slot.Options.Where(o => o.Id != sheet.Choices[item].Id))
            {
                var (choices, with) = WithNeeds(sheet, scenario, slot, option);
                if (choices is null) continue;
                var tried = sheet.Plan.Try(sheet, scenario with { Choices = choices });
                var known = tried.Findings().Where(f => f.Finding.Verdict is Verdict.Pass or Verdict.Caution).ToDictionary(f => f.Id, f => f.Finding.Verdict, StringComparer.Ordinal);
                // A caution is settled by a pass only: better than before, not merely no fail.
                var good = findings.Where(f => known.TryGetValue(f.Id, out var verdict) && verdict < f.Finding.Verdict).Select(f => f.Id).ToHashSet(StringComparer.Ordinal);
                if (good.Count == 0) continue;
                var remedy = new Remedy(slot, Words.OptionTitle(slot, option.Id), with, Ripple.Between(sheet, tried).Rows.Count(RippleGroups.IsWorse));
                foreach (var (finding, list) in settled)
                    if (good.Contains(finding))
                        list.Add(remedy);
            }
        }
        return settled.ToDictionary(s => s.Key, s => (IReadOnlyList<Remedy>)[.. s.Value.OrderBy(r => r.Worse).ThenBy(r => r.With.Count)], StringComparer.Ordinal);
    }

    /// <summary>A ratio for one axle alone settles nothing: what an option needs is tried with it.</summary>
    private static (System.Collections.Immutable.ImmutableSortedDictionary<string, string>? Choices, IReadOnlyList<string> With) WithNeeds(Sheet sheet, Scenario scenario, Slot slot, Option option)
    {
        var choices = scenario.Choices.SetItem(slot.Id, option.Id);
        List<string> with = [];
        foreach (var need in ResolvedOption.Of(slot, option).Body.Requires ?? [])
        {
            if (need.Options.Contains(sheet.Choices[need.Slot].Id)) continue;
            if (sheet.Build.Find(need.Slot) is not { } other || need.Options.Length == 0) return (null, []);
            choices = choices.SetItem(need.Slot, need.Options[0]);
            with.Add($"{other.Title}: {Words.OptionTitle(other, need.Options[0])}");
        }
        return (choices, with);
    }
}
