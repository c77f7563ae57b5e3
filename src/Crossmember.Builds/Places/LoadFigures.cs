using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Places;

/// <summary>What an axle or a wheel of it carries in one loading condition, against what it may.</summary>
/// <param name="Side">Null for the whole axle.</param>
/// <param name="Kilograms">Null where unknown.</param>
/// <param name="PlusMinus">One standard uncertainty, kg; null where nobody can say.</param>
/// <param name="Rating">kg, of the axle or of the tire; null where nobody has said.</param>
/// <param name="Verdict">The worst that a check of this load says; null where none does.</param>
public sealed record LoadFigure(string Axle, string? Side, double? Kilograms, double? PlusMinus, double? Rating, Verdict? Verdict)
{
    public double? Share => Kilograms / Rating;
}

/// <summary>The loads of every axle and wheel as a sheet tells them.</summary>
public static class LoadFigures
{
    /// <summary>Each axle, followed by its wheels.</summary>
    public static IReadOnlyList<LoadFigure> Of(Sheet sheet, string condition) =>
    [
        .. sheet.Build.Sets.Of("axle").SelectMany(axle => sheet.Build.Sets.Of("side").Select(side => Wheel(sheet, condition, axle, side)).Prepend(Axle(sheet, condition, axle))),
    ];

    private static LoadFigure Axle(Sheet sheet, string condition, string axle) =>
        Figure(sheet, axle, null, $"axle.{axle}.{condition}.load", $"axle.{axle}.rating", [$"mass.axle-load[axle={axle},condition={condition}]"]);

    private static LoadFigure Wheel(Sheet sheet, string condition, string axle, string side) =>
        Figure(sheet, axle, side, $"wheel.{axle}.{side}.{condition}.load", $"wheel.{axle}.{side}.tire.load-rating",
            [$"mass.wheel-load[axle={axle},condition={condition},side={side}]", $"tires.load[axle={axle},condition={condition},side={side}]"]);

    private static LoadFigure Figure(Sheet sheet, string axle, string? side, string load, string rating, string[] instances)
    {
        var carried = sheet.Key(load);
        var findings = instances.Select(sheet.Instance).OfType<InstanceState>().SelectMany(Sheet.FindingsOf).ToList();
        return new(axle, side, Number(carried), carried is { PlusMinus: > 0 and var spread } ? spread : null, Number(sheet.Key(rating)), findings.Count > 0 ? findings.Max(f => f.Finding.Verdict) : null);
    }

    private static double? Number(KeyState? key) => key is { Value.IsNumber: true } known ? known.Value.Number : null;
}
