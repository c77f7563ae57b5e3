using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Workshop;

/// <summary>What a new fact stands on must be there: its item, its option, its scenario. Only new facts are asked; old ones stood on solid ground then.</summary>
internal static class Grounds
{
    public static void Check(Fact fact, Build build, Faults faults)
    {
        if (fact.Payload is null || fact.Kind is "scenario.dropped" or "build.opened") return;
        if (build.Slots.IsEmpty && build.Title.Length == 0)
        {
            faults.Add(fact.Subject, "there is no such build", "open it first: import a file, or state what it is");
            return;
        }
        var parts = fact.Subject.Split('/');
        if (parts is ["slots", var slot, ..] && build.Find(slot) is null)
            faults.Add(fact.Subject, $"there is no item '{slot}'", $"nearest item: {Nearest.To(slot, build.Slots.Select(s => s.Id))}");
        else if (parts is ["scenarios", var scenario, ..] && !build.Scenarios.ContainsKey(scenario))
            faults.Add(fact.Subject, scenario == Option.Approved ? "what is approved cannot be edited" : $"there is no scenario '{scenario}'",
                $"one of: {string.Join(", ", build.Scenarios.Keys)}");
        else if (fact.Kind == EntryKind.ScenarioApproved.Name) Approved(fact, build, faults);
    }

    private static void Approved(Fact fact, Build build, Faults faults)
    {
        if (build.Approvals is not [.., var approval]) return;
        if (Deciding.Obstacle(build, approval.Scenario) is { } why) faults.Add(fact.Subject, $"'{approval.Scenario}' cannot be approved: {why}", "approve what rests on nothing tried out");
        foreach (var (slot, option) in approval.Choices)
            if (build.Find(slot)?.Find(option) is null)
                faults.Add(fact.Subject, $"'{slot}' has no option '{option}'", "approve choices that exist");
    }
}
