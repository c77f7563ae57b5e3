using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features;

/// <summary>The worst verdict each item has a part in: what its option in effect states is what the finding rests on.</summary>
public static class ItemVerdicts
{
    public static IReadOnlyDictionary<string, Verdict> Of(Sheet sheet)
    {
        var worst = new Dictionary<string, Verdict>(StringComparer.Ordinal);
        foreach (var finding in sheet.Findings())
        {
            var ofModel = finding.Id.StartsWith("model/", StringComparison.Ordinal);
            foreach (var slot in sheet.Build.Slots.Where(s => !worst.TryGetValue(s.Id, out var known) || known < finding.Finding.Verdict))
            {
                var number = sheet.Plan.SlotId(slot.Id);
                if (sheet.InEffect[number] is { } option && (option.Values.Any(v => finding.RestsOn.Has(v.Key)) || (ofModel && finding.RestsOn.Has(sheet.Plan.SlotLeaf(number)))))
                    worst[slot.Id] = finding.Finding.Verdict;
            }
        }
        return worst;
    }
}
