using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Places;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Vehicle;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>Mass and balance on paper: what each axle and wheel carries, where the weight sits, how it tips, and every entry it is made of.</summary>
public static class MassReport
{
    /// <summary>Calculations whose checks belong here.</summary>
    private static readonly string[] s_areas = ["mass.", "stability.", "tires.load", "springs.axle-capacity", "springs.ride-height", "model/weighing", "model/scale", "model/mass"];

    public static Document Of(Sheet sheet, Imprint imprint)
    {
        var title = sheet.Build.Title.Length > 0 ? sheet.Build.Title : sheet.Build.Id;
        var scenario = ShopWords.Scenario(sheet.Scenario, sheet.Build);
        var measure = imprint.Measure;
        List<string> conditions = [.. sheet.Build.Sets.Of("condition").OrderBy(c => sheet.Key($"mass.{c}.total") is { Value.IsNumber: true } m ? m.Value.Number : 0)];
        List<Block> blocks =
        [
            new Block.Heading(1, $"Mass and balance: {title}"),
            new Block.Facts([new("What-if", scenario), new("As of", imprint.AsOf(sheet)), new("Made", imprint.Printed), .. Weighed(sheet, measure)]),
            new Block.Heading(2, "What it carries"),
            .. conditions.Select(c => Loads(sheet, c, measure)),
            new Block.Heading(2, "Where the weight sits and how it tips"),
            Balance(sheet, conditions, measure),
            .. conditions is [.., var heaviest] ? new[] { Drawn(sheet, heaviest, measure) } : [],
            .. FindingBlocks.Of(sheet, measure, f => s_areas.Any(a => f.Id.StartsWith(a, StringComparison.Ordinal))),
            .. conditions.SelectMany(c => LedgerBlocks.Of(sheet, c, measure)),
            new Block.Heading(2, "Cautions"),
            new Block.Notice("Caution", [.. sheet.Instances.OfType<InstanceState>().Where(i => s_areas.Any(a => i.Instance.Id.StartsWith(a, StringComparison.Ordinal)))
                .SelectMany(i => i.Instance.Calculation.About.Cautions).Distinct(StringComparer.Ordinal).Select(c => (Text)c)]),
        ];
        return new($"{title}, {scenario}, mass and balance", $"{title} · mass and balance · {scenario}", imprint.Foot(sheet), imprint.Made, blocks);
    }

    private static IEnumerable<Named> Weighed(Sheet sheet, MeasureSystem measure)
    {
        if (sheet.Ledger.Weighings is not [.., var latest]) yield return new("On the scale", "never yet: no mass is known");
        else yield return new("On the scale", $"{latest.Date}, {Told(latest.Readings.Values.Sum(), Dimension.Mass, measure)} with everything then on board");
    }

    private static Block.Table Loads(Sheet sheet, string condition, MeasureSystem measure) =>
        new($"{ShopWords.Sentence(condition)}: {Shown(sheet, $"mass.{condition}.total", Dimension.Mass, measure)}", [new("where"), new("carries", true), new("give or take", true), new("may carry", true), new("of that", true), new("verdict")],
        [
            .. LoadFigures.Of(sheet, condition).Select(l => new Row(
            [
                l.Side is null ? Run.Strong($"{l.Axle} axle") : $"{l.Side} {l.Axle} wheel", Told(l.Kilograms, Dimension.Mass, measure), Told(l.PlusMinus, Dimension.Mass, measure, ""), Told(l.Rating, Dimension.Mass, measure, ""),
                l.Share is { } share ? $"{100 * share:0} %" : "", l.Verdict is { } verdict ? Run.Of(verdict) : "",
            ], l.Side is null ? 0 : 1)),
        ]);

    private static Block.Table Balance(Sheet sheet, List<string> conditions, MeasureSystem measure)
    {
        Row Line(string title, string key, Dimension dimension) => new([title, .. conditions.Select(c => (Text)Shown(sheet, key.Replace("{c}", c, StringComparison.Ordinal), dimension, measure))]);
        return new("", [new("center of gravity and slopes, standing still"), .. conditions.Select(c => new Column(c, true))],
        [
            Line("behind the front axle", "mass.{c}.center-x", Dimension.Length), Line("to the right of the middle", "mass.{c}.center-y", Dimension.Length),
            Line("over the ground", "mass.{c}.center-height", Dimension.Length), Line("static stability factor", "stability.{c}.static-factor", Dimension.Dimensionless),
            Line("tips across a slope of", "stability.{c}.side-slope", Dimension.Angle), Line("tips backward facing up", "stability.{c}.facing-up", Dimension.Angle),
            Line("tips forward facing down", "stability.{c}.facing-down", Dimension.Angle), Line("leans under 1 g sideways", "vehicle.{c}.roll-per-g", Dimension.Angle),
        ]);
    }

    private static Block.Figure Drawn(Sheet sheet, string condition, MeasureSystem measure) =>
        new($"Where the masses sit, {condition}: the area of a mark is as its mass; the quartered disc is the center of gravity.", new Picture.Drawn(MassDrawing.Of(sheet, condition, measure)));

    private static string Shown(Sheet sheet, string key, Dimension dimension, MeasureSystem measure) =>
        sheet.Key(key) is not { Value.IsNumber: true } k ? ShopWords.DontKnow
        : Told(k.Value.Number, dimension, measure) + (k.PlusMinus > 0 && double.IsFinite(k.PlusMinus) ? $" ± {Told(k.PlusMinus, dimension, measure)}" : "");

    internal static string Told(double? si, Dimension dimension, MeasureSystem measure, string absent = ShopWords.DontKnow)
    {
        if (si is not { } value || !double.IsFinite(value)) return absent;
        var unit = dimension == Dimension.Angle ? Units.Find("deg")! : Display.Customary(dimension, measure);
        // A scale shows whole pounds or kilograms, a tape tenths of an inch or millimetres.
        var format = unit.Code switch { "lb" or "kg" or "mm" => "0", "in" or "deg" => "0.0", _ => "0.00" };
        var told = unit.FromSi(value).ToString(format, System.Globalization.CultureInfo.InvariantCulture);
        if (double.Parse(told, System.Globalization.CultureInfo.InvariantCulture) == 0) told = told.TrimStart('-');
        return $"{told}{(unit.Code == "1" ? "" : " " + Display.Symbol(unit))}";
    }
}
