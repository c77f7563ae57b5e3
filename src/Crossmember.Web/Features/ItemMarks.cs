using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features;

/// <summary>Which items a sheet's trouble goes back to, and which are still open.</summary>
public sealed class ItemMarks
{
    private readonly Dictionary<string, List<SheetFinding>> _trouble = new(StringComparer.Ordinal);
    private readonly HashSet<string> _undecided = new(StringComparer.Ordinal);
    private readonly Sheet _sheet;

    private ItemMarks(Sheet sheet) => _sheet = sheet;

    public static ItemMarks Of(Sheet sheet, Scenario? scenario)
    {
        var marks = new ItemMarks(sheet);
        var decided = Choices.Explicit(sheet.Build, scenario);
        foreach (var slot in sheet.Build.Slots.Where(s => s.Options.Any(o => o.Id != Option.AsFound)))
            if (!decided.ContainsKey(slot.Id) && !sheet.Choices.TakenBy.ContainsKey(slot.Id))
                marks._undecided.Add(slot.Id);
        foreach (var finding in sheet.Findings().Where(f => f.Finding.Verdict is Verdict.Fail or Verdict.Unknown))
            foreach (var item in marks.Behind(finding))
                (marks._trouble.TryGetValue(item, out var list) ? list : marks._trouble[item] = []).Add(finding);
        return marks;
    }

    /// <summary>Nothing has been chosen where something could be.</summary>
    public bool IsUndecided(string item) => _undecided.Contains(item);

    /// <summary>Findings that say no, or don't know, and rest on what this item brings; worst first.</summary>
    public IReadOnlyList<SheetFinding> Trouble(string item) => _trouble.GetValueOrDefault(item, []);

    public Verdict? Worst(string item) => Trouble(item) is [var first, ..] ? first.Finding.Verdict : null;

    /// <summary>Of the items behind a finding, the one with most to choose from.</summary>
    public string? WhereToSettle(SheetFinding finding) => Behind(finding)
        .Select(i => _sheet.Build.Find(i)!).OrderByDescending(s => s.Options.Length).ThenBy(s => s.Id, StringComparer.Ordinal).FirstOrDefault()?.Id;

    /// <summary>Items with a choice whose option in effect states something the finding rests on. Masses alone do not count: everything weighs.</summary>
    public IEnumerable<string> Behind(SheetFinding finding)
    {
        var plan = _sheet.Plan;
        var leaves = finding.RestsOn.Items().ToHashSet();
        var ofModel = finding.Id.StartsWith("model/", StringComparison.Ordinal);
        return _sheet.Build.Slots.Where(slot => slot.Options.Length > 1 && _sheet.InEffect[plan.SlotId(slot.Id)] is { } option
            && (option.Values.Any(v => leaves.Contains(v.Key)) || (ofModel && leaves.Contains(plan.SlotLeaf(plan.SlotId(slot.Id)))))).Select(s => s.Id);
    }
}
