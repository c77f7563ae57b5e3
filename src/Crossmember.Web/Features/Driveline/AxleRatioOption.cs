using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features.Driveline;

/// <summary>An option of some item that states axle ratios.</summary>
/// <param name="Ratios">By axle, in the order of the build.</param>
/// <param name="Off">How far its ratio is from the one that would restore engine speed and pull, as a share; positive is deeper. Null where that is not known.</param>
public sealed record AxleRatioOption(Slot Item, string Id, string Title, IReadOnlyList<(string Axle, double Ratio)> Ratios, double? Off, bool IsChosen)
{
    private const string Pattern = "axle.{axle}.ratio", Driven = "rear";

    /// <summary>The nearest first.</summary>
    public static IReadOnlyList<AxleRatioOption> Of(Sheet sheet, double? restoring) =>
    [
        .. sheet.Build.Slots.SelectMany(slot => slot.Options.Select(o => (Slot: slot, Option: o)))
            .Select(o => (o.Slot, o.Option, Ratios: Stated(sheet.Plan, o.Slot, o.Option))).Where(o => o.Ratios.Count > 0)
            .Select(o => new AxleRatioOption(o.Slot, o.Option.Id, Words.OptionTitle(o.Slot, o.Option.Id), o.Ratios, OffBy(o.Ratios, restoring), sheet.Choices[o.Slot.Id].Id == o.Option.Id))
            .OrderBy(o => Math.Abs(o.Off ?? 0)).ThenBy(o => o.Item.Id, StringComparer.Ordinal).ThenBy(o => o.Id, StringComparer.Ordinal),
    ];

    /// <summary>What restores engine speed is asked of the rear axle, which always drives; a front axle alone is better than nothing.</summary>
    private static double? OffBy(List<(string Axle, double Ratio)> ratios, double? restoring) =>
        restoring is { } wanted ? (ratios.FirstOrDefault(r => r.Axle == Driven, ratios[0]).Ratio / wanted) - 1 : null;

    private static List<(string Axle, double Ratio)> Stated(EvaluationPlan plan, Slot slot, Option option) =>
    [
        .. new CompiledOption(slot, option, plan.Space).Values.Where(v => plan.Space.PatternOf(v.Key).Text == Pattern && v.Stated.Value.IsNumber)
            .Select(v => (plan.Space.Member(plan.Space.MembersOf(v.Key)[0]).Member, v.Stated.Value.Number)),
    ];
}
