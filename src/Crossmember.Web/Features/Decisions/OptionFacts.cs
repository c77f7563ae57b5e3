using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Decisions;

/// <summary>A value that an option brings, for one or more places.</summary>
public sealed record Brought(string Meaning, string Key, string Where, string Value, Basis Basis);

/// <summary>What choosing an option would do, in one breath.</summary>
public sealed record InOneBreath(int Worse, int Better, decimal Cost, string Currency, double Hours, double? Mass)
{
    public static InOneBreath Of(Ripple ripple, Totals from, Totals to)
    {
        var flips = ripple.Rows.Where(RippleGroups.ChangesVerdict).ToList();
        var worse = flips.Count(RippleGroups.IsWorse);
        return new(worse, flips.Count - worse, Spent(to) - Spent(from), to.CostTotal.Currency, to.HoursTotal - from.HoursTotal, to.Mass.Kilograms - from.Mass.Kilograms);
    }

    private static decimal Spent(Totals t) => t.CostTotal.Amount + t.Labour.Values.Sum(l => l.Amount);
}

/// <summary>Everything the card of an option shows.</summary>
public sealed record OptionFacts(
    string Id, string Title, string Class, string Price, string Hours, string Lead, string Originality, string Mass, IReadOnlyList<Brought> Brings, IReadOnlyList<string> Takes, IReadOnlyList<string> Needs)
{
    /// <param name="option">As it is in the sheet in which it is chosen.</param>
    public static OptionFacts Of(CompiledOption option, EvaluationPlan plan, Build build, MeasureSystem system)
    {
        var body = option.Body;
        var names = new RowNames(plan, build);
        return new(body.Id, Words.OptionTitle(option.Slot, body.Id), Words.Of(body.Class), PriceOf(body), HoursOf(body), body.Lead ?? "-",
            body.Originality is { } share ? Shown.Share(share) : "-", MassOf(body, system), BroughtBy(option, plan, names, system),
            [.. (body.Takes ?? []).Select(t => build.Find(t)?.Title ?? t)], [.. (body.Requires ?? []).Select(r => Need(r, build))]);
    }

    private static string Need(Requirement need, Build build) => build.Find(need.Slot) is { } other
        ? $"{other.Title}: {string.Join(" or ", need.Options.Select(o => Words.OptionTitle(other, o)))}" : need.Slot;

    /// <summary>What its price lines add up to before tax; null where it states none.</summary>
    public static Planning.Money? Bought(Option body)
    {
        var lines = (body.Prices ?? []).Where(p => p.Each is not null).ToList();
        return lines.Count == 0 ? null : lines.Select(p => (p.Each!.Value * p.Count).Rounded()).Aggregate((a, b) => a + b);
    }

    private static string PriceOf(Option body) => Bought(body) is { } sum ? Shown.Money(sum) : "-";

    private static string HoursOf(Option body) => body.Hours is { Length: > 0 } lines ? Shown.Hours(lines.Sum(h => h.Hours?.Mean ?? 0)) : "-";

    private static string MassOf(Option body, MeasureSystem system) => body switch
    {
        { Masses: { Length: > 0 } items } => items.Any(m => m.Kilograms is null) ? Words.DontKnow : Shown.Mass(items.Sum(m => m.Kilograms!.Value), system),
        { MassBelow: { } below } => $"under {Shown.Mass(below, system)}",
        { Masses: { } } => "none",
        { Id: Option.AsFound } => "as weighed",
        _ => Words.DontKnow,
    };

    private static List<Brought> BroughtBy(CompiledOption option, EvaluationPlan plan, RowNames names, MeasureSystem system) =>
    [
        .. option.Values.Select(v => (Key: plan.Space.KeyName(v.Key), Pattern: plan.Space.PatternOf(v.Key), v.Stated))
            .GroupBy(v => (v.Pattern, v.Stated.Typed, v.Stated.Basis))
            .Select(g => new Brought(names.Key(g.First().Key).Title, string.Join(", ", g.Select(v => v.Key)), Places([.. g.Select(v => names.Key(v.Key).Where)]),
                Shown.Value(g.First().Stated.Value, g.Key.Pattern, g.Key.Typed, system), g.Key.Basis)),
    ];

    private static string Places(IReadOnlyList<string> places) => places.Count > 3 ? $"in all {places.Count} places" : string.Join("; ", places.Where(p => p.Length > 0));
}
