using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features;

/// <summary>The worst verdict each item has a part in: its option in effect states what the finding rests on, or what the finding lacks would be stated there.</summary>
public static class ItemVerdicts
{
    public static IReadOnlyDictionary<string, Verdict> Of(Sheet sheet)
    {
        var homes = new HomeItems(sheet);
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
        foreach (var key in Unsettled.ByKey(sheet).Keys.Select(sheet.Plan.Space.KeyId).Where(k => k >= 0))
            if (homes.Of(key).Id is var home && (!worst.TryGetValue(home, out var known) || known < Verdict.Unknown))
                worst[home] = Verdict.Unknown;
        return worst;
    }
}
