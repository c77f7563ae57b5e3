using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Workshop;

/// <summary>Checks and ripples of a build by the names people use: a scenario, <c>as-found</c>, <c>approved</c>, or <c>approved@</c> (as it was then).</summary>
public sealed class Comparing(OpenBuild open, ShopFacts shop, Func<long, StateThen> then)
{
    private const string ApprovedThen = "approved@";

    /// <summary>The scenario to take where none is named: the only one, else <c>working</c>, else a fault that lists them.</summary>
    public string? Default(Faults faults)
    {
        var ids = open.Build.Scenarios.Keys.ToList();
        if (ids.Count == 1) return ids[0];
        if (ids.Contains("working")) return "working";
        if (ids.Count == 0) return Option.AsFound;
        faults.Add("/scenarios", "no scenario is named and none is called 'working'", $"name one of: {string.Join(", ", ids)}");
        return null;
    }

    public Sheet? Sheet(string scenario, Faults faults)
    {
        if (scenario == ApprovedThen && open.Approval is { } approval) return AsApproved(approval).Was;
        if (open.Sheet(scenario, shop) is { } sheet) return sheet;
        faults.Add("/scenarios", Unknown(scenario), Names());
        return null;
    }

    public Ripple? Ripple(string from, string to, Faults faults)
    {
        if (from != ApprovedThen && to != ApprovedThen)
            return Sheet(from, faults) is { } a && Sheet(to, faults) is { } b ? Ripples.Ripple.Between(a, b) : null;
        if (open.Approval is not { } approval)
        {
            faults.Add("/scenarios", "nothing is approved yet", Names());
            return null;
        }
        var (plan, was) = AsApproved(approval);
        Sheet? Now(string name) => name == ApprovedThen ? was : SheetIn(plan, name, faults);
        return Now(from) is { } x && Now(to) is { } y ? Ripples.Ripple.Between(x, y) : null;
    }

    /// <summary>Then and now do not have the same keys: both are compiled into one plan.</summary>
    private (EvaluationPlan Plan, Sheet Was) AsApproved(Approval approval)
    {
        var past = then(approval.BuildPosition);
        var plan = new EvaluationPlan(open.Plan.Catalogue, past.Build, open.Build);
        return (plan, plan.Evaluate(past.Build, past.Shop(approval.ShopPosition), ApprovedThen, approval.Choices));
    }

    private Sheet? SheetIn(EvaluationPlan plan, string name, Faults faults)
    {
        if (name == Option.AsFound) return plan.Evaluate(open.Build, shop, (Scenario?)null);
        if (name == Option.Approved) return plan.Evaluate(open.Build, shop, name, open.Approval!.Choices);
        if (open.Build.Scenarios.TryGetValue(name, out var s)) return plan.Evaluate(open.Build, shop, s);
        faults.Add("/scenarios", Unknown(name), Names());
        return null;
    }

    private static string Unknown(string scenario) => scenario is Option.Approved or ApprovedThen ? "nothing is approved yet" : $"there is no scenario '{scenario}'";

    private string Names() => "one of: " + string.Join(", ", open.Build.Scenarios.Keys.Prepend(Option.AsFound).Concat(open.Approval is null ? [] : [Option.Approved, ApprovedThen]));
}

/// <summary>The build at an earlier position, and the shop at any.</summary>
public sealed record StateThen(Build Build, Func<long, ShopFacts> Shop);
