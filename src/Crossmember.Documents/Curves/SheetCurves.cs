using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Curves;

/// <summary>The charts of one instance of a calculation, in one sheet or in two that are compared.</summary>
public static class SheetCurves
{
    /// <summary>Null where the instance does not exist in the sheet; none where it draws nothing or lacks what it needs.</summary>
    public static IReadOnlyList<CurveChart>? Of(Sheet now, Sheet? against, string instance, MeasureSystem measure) =>
        now.Instance(instance) is not { } state ? null
        : CurveChart.Of(Title(now, instance), SideOf(now, state), against?.Instance(instance) is { } past ? SideOf(against, past) : null, measure);

    /// <summary>What the calculation is called, and the members it is for.</summary>
    private static string Title(Sheet sheet, string instance)
    {
        // A check without a name is told by the title of its calculation.
        var name = new RowNames(sheet.Plan, sheet.Build).Finding(instance + "/");
        return name.Where.Length > 0 ? $"{name.Title}, {name.Where}" : name.Title;
    }

    private static Side SideOf(Sheet sheet, InstanceState state) => new(ShopWords.Scenario(sheet.Scenario, sheet.Build), state.Shown().Curves);
}
