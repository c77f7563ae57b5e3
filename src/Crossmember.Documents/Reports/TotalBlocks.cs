using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Planning;
using Side = Crossmember.Documents.Paper.Side;

namespace Crossmember.Documents.Reports;

/// <summary>What a build comes to: in one line, and by what it is made of.</summary>
internal static class TotalBlocks
{
    private static readonly Verdict[] s_worstFirst = [Verdict.Fail, Verdict.Unknown, Verdict.Caution, Verdict.Pass];

    public static IEnumerable<Block> Headlines(Sheet sheet, MeasureSystem measure)
    {
        var totals = sheet.Totals;
        yield return new Block.Facts(
        [
            new("Bought, with tax", Shown.Money(totals.CostTotal)),
            new("Labour at the shop's rates", totals.Labour.Count == 0 ? "-" : Shown.Money(Sum(totals.Labour.Values))),
            new("Hours, mean", Shown.Hours(totals.HoursTotal)),
            new("Mass, nobody aboard", totals.Mass.Kilograms is { } kg ? Shown.Mass(kg, measure) : ShopWords.DontKnow),
        ]);
        if (totals.Mass is { Kilograms: null, Missing.Count: > 0 } mass)
            yield return new Block.Paragraph(Run.Hint($"To know the mass, weigh: {string.Join(", ", mass.Missing.Select(m => ShopWords.Within(sheet.Build.Find(m)?.Title ?? m)))}."));
        if (totals.Originality is { } share) yield return new Block.Figure($"Originality: {Shown.Share(share)} of the vehicle, by the weight given to each item, stays as it was made", new Picture.Drawn(Proportion(share)));
        var counts = sheet.Findings().GroupBy(f => f.Finding.Verdict).ToDictionary(g => g.Key, g => g.Count());
        yield return new Block.Paragraph(new([.. s_worstFirst.SelectMany((v, i) => (Run[])[i == 0 ? "Checks: " : " · ", Run.Of(v), $" {counts.GetValueOrDefault(v)}"])]));
    }

    public static IEnumerable<Block> Breakdown(Totals totals)
    {
        if (totals.Cost.Count > 0)
        {
            yield return new Block.Heading(2, "What is bought");
            yield return new Block.Table("", [new("category"), new("cost with tax", true)],
                [.. totals.Cost.Select(c => new Row([ShopWords.Sentence(c.Key.Replace('-', ' ')), Shown.Money(c.Value)])), new Row([Run.Strong("In all"), Run.Strong(Shown.Money(totals.CostTotal))])]);
        }
        if (totals.Hours.Count == 0) yield break;
        yield return new Block.Heading(2, "Hours");
        yield return new Block.Table("", [new("trade"), new("mean hours", true), new("at the shop's rate", true)],
        [
            .. totals.Hours.Select(h => new Row([ShopWords.Sentence(h.Key.Replace('-', ' ')), Shown.Hours(h.Value), totals.Labour.TryGetValue(h.Key, out var at) ? Shown.Money(at) : "no rate"])),
            new Row([Run.Strong("In all"), Run.Strong(Shown.Hours(totals.HoursTotal)), totals.Labour.Count == 0 ? "" : Run.Strong(Shown.Money(Sum(totals.Labour.Values)))]),
        ]);
    }

    private static Money Sum(IEnumerable<Money> amounts) => amounts.Aggregate((a, b) => a + b);

    /// <summary>How much of the whole is left, as a part of a bar.</summary>
    private static Drawing Proportion(double share)
    {
        const double width = 182, height = 7, from = 0.2;
        var kept = Math.Clamp(share, 0, 1) * (width - (2 * from));
        return new(width, 12, $"{Shown.Share(share)} original",
        [
            Shape.Box(from, from, kept, height, null, Ink.OfCurve(1)), Shape.Box(from, from, width - (2 * from), height, Ink.Quiet),
            new Shape.Label(new(from, 11.2), "original", 3, Ink.Quiet), new Shape.Label(new(width - from, 11.2), "changed", 3, Ink.Quiet, Side.End),
        ]);
    }
}
