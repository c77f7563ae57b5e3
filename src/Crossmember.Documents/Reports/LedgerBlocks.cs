using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Places;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>Every entry that makes up the mass of a loading condition.</summary>
internal static class LedgerBlocks
{
    public static IEnumerable<Block> Of(Sheet sheet, string condition, MeasureSystem measure)
    {
        var lines = LedgerLines.Of(sheet, condition);
        if (lines.Weighing is null) yield break;
        var wheelbase = sheet.Key("vehicle.wheelbase") is { Value.IsNumber: true } known ? known.Value.Number : lines.Weighing.Wheelbase;
        var doubt = lines.All.Sum(l => l.PlusMinus * l.PlusMinus ?? 0);
        yield return new Block.Heading(2, $"What makes it up, {condition}");
        yield return new Block.Table("",
            [new("entry", Share: 2), new("how"), new("mass", true), new("give or take", true), new("on the front", true), new("on the rear", true), new("share of the doubt", true), new("where from")],
            [.. lines.All.OrderByDescending(l => l.IsKnown ? l.Moves(wheelbase) : double.MaxValue).Select(l => Line(l, lines, wheelbase, doubt, measure)), Total(lines, wheelbase, measure)]);
        yield return new Block.Paragraph("Weigh first what brings most of the doubt; what brings less than a hundredth of it need not be weighed.");
    }

    private static Row Line(LedgerLine l, LedgerLines lines, double wheelbase, double doubt, MeasureSystem measure) => new(
    [
        Name(l, lines), How(l.Part), MassReport.Told(l.Kilograms, Dimension.Mass, measure), MassReport.Told(l.PlusMinus, Dimension.Mass, measure, ""),
        MassReport.Told(l.Front(wheelbase), Dimension.Mass, measure, ""), MassReport.Told(l.Rear(wheelbase), Dimension.Mass, measure, ""),
        l.PlusMinus is { } u && doubt > 0 ? $"{100 * u * u / doubt:0} %" : "", ShopWords.Of(l.Basis),
    ]);

    private static Row Total(LedgerLines lines, double wheelbase, MeasureSystem measure) => new(
    [
        Run.Strong("together"), "", MassReport.Told(lines.Kilograms, Dimension.Mass, measure), "", MassReport.Told(lines.Kilograms - (lines.MomentX / wheelbase), Dimension.Mass, measure),
        MassReport.Told(lines.MomentX / wheelbase, Dimension.Mass, measure), "", "",
    ]);

    private static string Name(LedgerLine l, LedgerLines lines) => l switch
    {
        { Part: LedgerPart.Weighed } => $"on the scale, {lines.Weighing!.Date}",
        { Slot: null } => l.Name,
        { IsKnown: false, Item: null } => $"{l.Slot.Title}: nobody has said what the change weighs",
        { IsBelow: true } => $"{l.Slot.Title}: surely below, half counts",
        _ => $"{l.Slot.Title}: {l.Name}",
    };

    private static string How(LedgerPart part) => part switch
    {
        LedgerPart.Weighed => "weighed",
        LedgerPart.WasAboard => "was on board then",
        LedgerPart.CameOff => "came off",
        LedgerPart.PutOn => "put on",
        _ => "on board",
    };
}
