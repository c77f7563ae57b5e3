using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Brakes;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>Sheets of the brakes that are taken to the vehicle and written on, each from the top of a page.</summary>
internal static class BrakeSheets
{
    private const int Stops = 5;

    /// <summary>A box that is ticked by hand, and a line that is written on.</summary>
    private const string Box = "[\u00a0\u00a0\u00a0]", Rule = "\n____________", Short = "\n________", Flat = "____________";

    public static IEnumerable<Block> Lines(Sheet sheet, MeasureSystem measure)
    {
        yield return new Block.NewPage();
        yield return new Block.Heading(2, "Line schedule");
        yield return new Block.Paragraph("Every tube and hose from the master cylinder to the wheels. Where the vehicle is laid otherwise, strike out and write in; what nobody has said is left to fill in by hand.");
        var lines = BrakeLine.Of(sheet);
        yield return new Block.Table(sheet.Key("brakes.circuits")?.Value.Text is { } circuits ? $"Circuits: {circuits}" : "Circuits: not said, drawn as front and rear",
            [new("no."), new("circuit"), new("from", Share: 2), new("to", Share: 2), new("kind"), new("size"), new("length"), new("flare"), new("tight, dry")],
            [.. lines.Select((l, i) => new Row([$"{i + 1}", l.Circuit, l.From, l.To, l.IsHose ? "hose" : "tube", Short, l.Length is { } m ? Display.Show(m, Dimension.Length, measure) : Rule, l.IsHose ? "-" : Rule, Box])),
                .. Enumerable.Range(lines.Count + 1, 3).Select(i => new Row([$"{i}", Short, Rule, Rule, Short, Short, Rule, Rule, Box]))]);
        yield return new Block.Notice("Caution", [.. BrakeWords.LineCautions.Select(c => (Text)c)]);
    }

    public static IEnumerable<Block> Bleeding(MeasureSystem measure)
    {
        yield return new Block.NewPage();
        yield return new Block.Heading(2, "Filling and bleeding");
        yield return Checklist(BrakeWords.Bleeding);
        yield return new Block.Heading(2, "Bedding in");
        yield return Checklist(BrakeWords.Bedding(measure));
        yield return new Block.Paragraph(Run.Hint("Common practice, no source, unless one is named. What the makers of linings, cylinders and fluid say comes first."));
    }

    public static IEnumerable<Block> Gauges(Sheet sheet, IReadOnlyList<string> conditions, MeasureSystem measure)
    {
        yield return new Block.NewPage();
        yield return new Block.Heading(2, "Gauge sheet");
        yield return Blanks("Day", "Who", "Gauges, checked on", "Vacuum, warm idle", "Loaded how", "Fluid");
        yield return new Block.Notice("Caution", [BrakeWords.GaugeCaution]);
        yield return new Block.Bullets([.. BrakeWords.GaugeSteps.Select(s => (Text)s)]);
        var lightest = GaugeSheet.Of(sheet, conditions is [var first, ..] ? first : null, measure);
        yield return Expected(lightest, measure);
        if (lightest.FollowsLoad)
            foreach (var condition in conditions.Skip(1)) yield return Expected(GaugeSheet.Of(sheet, condition, measure), measure);
    }

    public static IEnumerable<Block> RoadTest(MeasureSystem measure)
    {
        yield return new Block.NewPage();
        yield return new Block.Heading(2, "Road-test sheet");
        yield return Blanks("Day", "Driver", "Watcher", "Ground, dry or wet", "Mass, loaded how", "Tire pressures");
        yield return new Block.Notice("Caution", [.. BrakeWords.RoadCautions.Select(c => (Text)c)]);
        yield return new Block.Table("In this order; each only when the one before it was good", [new("test", Share: 2), new("good when", Share: 1.4), new("seen", Share: 1.2), new("good")],
            [.. BrakeWords.RoadTest(measure).Select(t => new Row([t.Test, t.Good, Flat, Box]))]);
        yield return new Block.Table("Decelerations, to note as the curve of the road test", [new("speed"), new("pedal force", true), new("deceleration, g", true), new("locked first"), new("pulled to")],
            [.. Enumerable.Range(0, Stops).Select(_ => new Row([Rule, Rule, Rule, Rule, Rule]))]);
    }

    private static Block.Table Expected(GaugeSheet gauges, MeasureSystem measure)
    {
        string Told(double? p) => p is { } known ? GaugeSheet.Told(known, Dimension.Pressure, measure) : ShopWords.DontKnow;
        Column[] pair = gauges.Boosted ? [new("front, booster working", true), new("read"), new("rear", true), new("read"), new("front, booster dead", true), new("read"), new("rear", true), new("read")]
            : [new("front", true), new("read"), new("rear", true), new("read")];
        return new(gauges.FollowsLoad ? $"Expected, loaded as {gauges.Condition}" : "Expected", [new("pedal force", true), .. pair],
        [
            .. gauges.Rows.Select(r => new Row([GaugeSheet.Told(r.Pedal, Dimension.Force, measure),
                .. (gauges.Boosted ? new[] { r.Front, r.Rear, r.DeadFront, r.DeadRear } : [r.Front, r.Rear]).SelectMany(p => (Text[])[Told(p), Short])])),
            new Row(["pedal up", Told(gauges.RestFront), Short, Told(gauges.RestRear), Short]),
        ]);
    }

    private static Block.Facts Blanks(params string[] names) => new([.. names.Select(n => new Named(n, Rule))]);

    private static Block.Table Checklist(IReadOnlyList<string> steps) => new("", [new("done"), new("step", Share: 4), new("by")], [.. steps.Select(s => new Row([Box, s, Flat]))]);
}
