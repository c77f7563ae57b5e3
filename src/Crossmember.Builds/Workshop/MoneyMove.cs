using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Planning;

namespace Crossmember.Builds.Workshop;

/// <summary>What another rate, tax or rounding would do to the money of one scenario: what is bought and the labour together.</summary>
public sealed record MoneyMove(Build Build, string Scenario, Money Now, Money Then)
{
    public bool Moves => Now != Then;

    /// <summary>One for each scenario named that the build has.</summary>
    public static IEnumerable<MoneyMove> Of(OpenBuild open, IEnumerable<string> scenarios, ShopFacts now, ShopFacts then)
    {
        foreach (var scenario in scenarios)
        {
            if (Totals(open, scenario, now) is { } before && Totals(open, scenario, then) is { } after)
                yield return new(open.Build, scenario, Sum(before), Sum(after));
        }
    }

    /// <summary>Bought and labour in one sum.</summary>
    public static Money Sum(Totals totals) => totals.Labour.Values.Aggregate(totals.CostTotal, (sum, labour) => sum + labour);

    // Worked out beside the sheets that are remembered by position: the shop that is only looked at has none.
    private static Totals? Totals(OpenBuild open, string scenario, ShopFacts shop) => scenario switch
    {
        Option.AsFound => open.Plan.Evaluate(open.Build, shop, (Scenario?)null).Totals,
        Option.Approved => open.Approval is { } a ? open.Plan.Evaluate(open.Build, shop, Option.Approved, a.Choices).Totals : null,
        _ => open.Build.Scenarios.TryGetValue(scenario, out var s) ? open.Plan.Evaluate(open.Build, shop, s).Totals : null,
    };
}
