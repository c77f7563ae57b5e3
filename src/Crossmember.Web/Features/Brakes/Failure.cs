using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features.Areas;

namespace Crossmember.Web.Features.Brakes;

/// <summary>What the same foot makes of it in one state of the brakes, in g.</summary>
/// <param name="Asked">What is asked then; null where nothing is.</param>
public sealed record FailureBar(string State, Verdict? Verdict, double? Z, double? Was, double? Asked);

/// <summary>The states side by side in one loading.</summary>
public sealed record FailureRow(string Condition, IReadOnlyList<FailureBar> Bars)
{
    private static readonly (string State, string Calculation, string Output, string Check)[] s_states =
    [
        ("All working", "brakes.stop", "atMost", "distance"), ("Booster dead", "brakes.failure", "boosterDead", "booster-dead"),
        ("Front circuit lost", "brakes.failure", "frontLost", "front-lost"), ("Rear circuit lost", "brakes.failure", "rearLost", "rear-lost"),
    ];

    /// <summary>Lightest loading first; only those of which something is known.</summary>
    public static IReadOnlyList<FailureRow> Of(AreaView view) =>
        [.. view.Conditions.Reverse().Select(c => new FailureRow(c, [.. s_states.Select(s => Bar(view, c, s))])).Where(r => r.Bars.Any(b => b.Z is not null))];

    /// <summary>One circuit has neither a front nor a rear to lose: the checks say so, and nothing is left.</summary>
    private static FailureBar Bar(AreaView view, string condition, (string State, string Calculation, string Output, string Check) state)
    {
        var id = $"{state.Calculation}[condition={condition}]";
        var now = view.Now.Instance(id);
        var finding = now is null ? null : Sheet.FindingsOf(now).Select(f => f.Finding).FirstOrDefault(f => f.Check == state.Check);
        return new(state.State, finding?.Verdict, Gravities(now, state.Output), Gravities(view.Then?.Instance(id), state.Output), finding is { Limit: { } limit, Unit: "m/s2" } ? limit / Loading.Gravity : null);
    }

    private static double? Gravities(InstanceState? state, string output) =>
        state?.Instance.Calculation.OutputIndex(output) is >= 0 and var i && state.Outcome.Outputs[i] is { IsNumber: true } value
            ? state.Instance.Calculation.OutputSpecs[i].Dimension == Engineering.Quantities.Dimension.Acceleration ? value.Number / Loading.Gravity : value.Number : null;
}
