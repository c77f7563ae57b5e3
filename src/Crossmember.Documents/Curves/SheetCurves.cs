using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Curves;

/// <summary>The charts of one instance of a calculation, in one sheet or in two that are compared.</summary>
public static class SheetCurves
{
    /// <summary>Null where the instance does not exist in the sheet; none where it draws nothing or lacks what it needs.</summary>
    /// <param name="instance">Or a calculation: all its instances in one picture.</param>
    public static IReadOnlyList<CurveChart>? Of(Sheet now, Sheet? against, string instance, MeasureSystem measure) =>
        now.Instance(instance) is not { } state ? Together(now, against, instance, measure)
        : Told(CurveChart.Of(Title(now, instance), SideOf(now, state), against?.Instance(instance) is { } past ? SideOf(against, past) : null, measure));

    /// <summary>What all instances draw alike stands once; the rest bears the instance's members beside its name.</summary>
    private static IReadOnlyList<CurveChart>? Together(Sheet now, Sheet? against, string calculation, MeasureSystem measure) =>
        Instances(now, calculation) is not [var first, ..] ? null
        : Told(CurveChart.Of(first.Instance.Calculation.About.Title, Joined(now, calculation), against is null ? null : Joined(against, calculation), measure));

    /// <summary>Several charts of one calculation are told apart by what they show.</summary>
    private static IReadOnlyList<CurveChart> Told(IReadOnlyList<CurveChart> charts) => charts.Count < 2 ? charts : [.. charts.Select(c => c with { Title = $"{c.Title}: {c.Y.Label} over {c.X.Label}" })];

    private static Side Joined(Sheet sheet, string calculation)
    {
        var names = new RowNames(sheet.Plan, sheet.Build);
        var drawn = Instances(sheet, calculation).SelectMany(i => i.Shown().Curves.Select(c => (Where: names.Finding(i.Instance.Id + "/").Where, Curve: c))).ToList();
        return new(ShopWords.Scenario(sheet.Scenario, sheet.Build), [.. drawn.GroupBy(d => (d.Curve.Name, d.Curve.XLabel, d.Curve.YLabel)).SelectMany(g =>
            g.First().Curve.IsGuide ? [g.MaxBy(d => d.Curve.Y.Max()).Curve]
            : g.Count() > 1 && g.All(d => Same(d.Curve, g.First().Curve)) ? [g.First().Curve]
            : g.Select(d => d.Where.Length > 0 ? d.Curve with { Name = $"{d.Curve.Name}, {d.Where}" } : d.Curve))]);
    }

    private static bool Same(PlottedCurve a, PlottedCurve b) => a.X.SequenceEqual(b.X) && a.Y.SequenceEqual(b.Y);

    private static List<InstanceState> Instances(Sheet sheet, string calculation) => [.. sheet.Instances.OfType<InstanceState>().Where(i => i.Instance.Calculation.Id == calculation)];

    /// <summary>What the calculation is called, and the members it is for.</summary>
    private static string Title(Sheet sheet, string instance)
    {
        // A check without a name is told by the title of its calculation.
        var name = new RowNames(sheet.Plan, sheet.Build).Finding(instance + "/");
        return name.Where.Length > 0 ? $"{name.Title}, {name.Where}" : name.Title;
    }

    private static Side SideOf(Sheet sheet, InstanceState state) => new(ShopWords.Scenario(sheet.Scenario, sheet.Build), state.Shown().Curves);
}
