using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features.Areas;

namespace Crossmember.Web.Features.Brakes;

/// <summary>What one side, and the side it is compared with, say of a part of the brakes.</summary>
public sealed class BrakesView(OpenBuild open, ShopFacts shop, string scenario, string? against, params string[] calculations) : AreaView(open, shop, scenario, against, calculations)
{
    /// <summary>A disc has no shoes and a drum no pads: what is told of the one kind is not missed at the other.</summary>
    protected override bool IsAnswered(InstanceState state) => !state.Outcome.Outputs[0].IsAbsent && state.Outcome.Findings.All(f => f.Verdict != Verdict.Unknown);

    /// <summary>A bar between two cylinders, or a booster, is asked about only where there is one, or nobody has said.</summary>
    protected override bool IsAsked(InstanceState state) => state.Instance.Calculation.Id switch
    {
        "brakes.bias-bar" => Now.Key("brakes.master.kind")?.Value.Text == "twin",
        "brakes.booster-reserve" => Now.Key("brakes.booster.kind")?.Value.Text == "vacuum",
        _ => true,
    };
}
