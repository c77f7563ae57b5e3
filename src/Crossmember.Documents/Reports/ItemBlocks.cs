using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>Every item with what is chosen for it, what that states and where it is from.</summary>
internal static class ItemBlocks
{
    public static IEnumerable<Block> Of(Sheet sheet, MeasureSystem measure)
    {
        yield return new Block.Heading(2, "Items");
        var names = new RowNames(sheet.Plan, sheet.Build);
        yield return new Block.Table("", [new("item"), new("chosen"), new("grade"), new("what it states, and where from", Share: 2)],
            [.. InTreeOrder(sheet.Build).Select(s => One(s.Slot, s.Depth, sheet, names, measure))]);
    }

    private static Row One(Slot slot, int depth, Sheet sheet, RowNames names, MeasureSystem measure)
    {
        if (sheet.InEffect[sheet.Plan.SlotId(slot.Id)] is not { } option) return new([slot.Title, "", "", ""], depth);
        var chosen = ShopWords.OptionTitle(slot, option.Body.Id);
        var what = ShopWords.Of(option.Body.Class);
        var by = sheet.Choices.TakenBy.TryGetValue(slot.Id, out var taker) ? $"in {ShopWords.Within(sheet.Build.Find(taker)?.Title ?? taker)}" : what;
        return new([slot.Title, by.Length > 0 && !by.Equals(chosen, StringComparison.OrdinalIgnoreCase) ? new Text(chosen, Run.Hint($" {by}")) : chosen, slot.Grade ?? "", Stated(option, sheet, names, measure)], depth);
    }

    private static Text Stated(CompiledOption option, Sheet sheet, RowNames names, MeasureSystem measure)
    {
        var space = sheet.Plan.Space;
        var runs = new List<Run>();
        foreach (var family in option.Values.GroupBy(v => (Pattern: space.PatternOf(v.Key), v.Stated.Basis)))
        {
            runs.Add($"{(runs.Count > 0 ? "\n" : "")}{names.Key(space.KeyName(family.First().Key)).Title}: ");
            var first = true;
            foreach (var same in family.GroupBy(v => Shown.Value(v.Stated.Value, family.Key.Pattern, v.Stated.Typed, measure)))
            {
                var places = Places([.. same.Select(v => names.Key(space.KeyName(v.Key)).Where).Where(w => w.Length > 0)]);
                runs.Add($"{(first ? "" : ", ")}{places}{(places.Length > 0 ? " " : "")}");
                runs.Add(Run.Strong(same.Key));
                first = false;
            }
            runs.Add(Run.Hint($" ({ShopWords.Of(family.Key.Basis)})"));
        }
        return new([.. runs]);
    }

    private static string Places(IReadOnlyList<string> places) => places.Count > 3 ? $"in all {places.Count} places" : string.Join(" and ", places);

    /// <summary>Every item under the one it belongs to, in the order they were listed. What belongs nowhere stands at the end.</summary>
    private static List<(Slot Slot, int Depth)> InTreeOrder(Build build)
    {
        var listed = new List<(Slot, int)>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        void Take(Slot slot, int depth)
        {
            if (!seen.Add(slot.Id)) return;
            listed.Add((slot, depth));
            foreach (var child in build.Slots.Where(s => s.Parent == slot.Id)) Take(child, depth + 1);
        }
        foreach (var root in build.Slots.Where(s => s.Parent is null)) Take(root, 0);
        foreach (var stray in build.Slots) Take(stray, 0);
        return listed;
    }
}
