using System.Globalization;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Ripples;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Planning;

namespace Crossmember.Documents.Wording;

/// <summary>Numbers as the person at the desk reads them.</summary>
public static class Shown
{
    /// <summary>One side of a knock-on, without its verdict.</summary>
    public static string Side(Side? side, RowKind kind, MeasureSystem system) => side switch
    {
        null => "not there",
        { Number: { } n } when kind == RowKind.Originality => Share(n),
        { Number: { } n } when kind == RowKind.Cost => Money(new((decimal)n, side.Unit!)),
        { Number: { } n } when kind == RowKind.Hours => Hours(n),
        { Number: { } n } => Number(n, side.Unit, system),
        { Text: { } text } when kind == RowKind.Task => text.Length > 0 ? "planned" : "",
        { Text: { } text, Unit: not null } => $"curve of {text.Count(c => c == ';') + 1} points",
        { Text: { } text } => text,
        _ => ShopWords.DontKnow,
    };

    /// <summary>A number in one of our unit codes.</summary>
    public static string Number(double number, string? code, MeasureSystem system) =>
        code == "%" ? $"{Engineering.Quantities.Figures.Short(number)} %"
        : code is null ? Engineering.Quantities.Figures.Short(number)
        : Units.Find(code) is { } unit ? Display.Show(unit.ToSi(number), unit.Dimension, system)
        : $"{Engineering.Quantities.Figures.Short(number)} {code}";

    /// <summary>What a check compared, in the reader's units; null where it compared no numbers.</summary>
    /// <param name="between">What stands between the value and its limit.</param>
    public static string? Compared(Finding finding, MeasureSystem system, string between = ", ") =>
        finding is { Value: { } value, Limit: { } limit, Sense: { } sense, Unit: { } unit } && unit != "1"
            ? $"{Number(value, unit, system)}{between}{(sense == Sense.AtMost ? "at most" : "at least")} {Number(limit, unit, system)}" : null;

    public static string Value(Value value, ParameterPattern pattern, string? typed, MeasureSystem system) =>
        value.IsAbsent ? ShopWords.DontKnow
        : value.IsNumber && typed is not null && ShopNotation.Read(typed, pattern.Dimension!).Value is { } q ? Display.Show(q, system)
        : value.IsNumber ? Display.Show(value.Number, pattern.Dimension!, system)
        : value.Text ?? $"curve of {value.Curve!.Points.Count} points";

    public static string Money(Money money)
    {
        var rounded = money.Rounded();
        return $"{rounded.Amount.ToString("N" + Planning.Money.Decimals(money.Currency), CultureInfo.InvariantCulture)} {money.Currency}";
    }

    public static string Hours(double hours) => $"{hours.ToString("0.#", CultureInfo.InvariantCulture)} h";

    public static string Share(double share) => $"{(share * 100).ToString("0.#", CultureInfo.InvariantCulture)} %";

    public static string Mass(double kilograms, MeasureSystem system) => Display.Show(kilograms, Dimension.Mass, system);

    /// <summary>With its sign, for what a choice adds or takes away.</summary>
    public static string Signed(double amount, Func<double, string> show) => (amount < 0 ? "−" : "+") + show(Math.Abs(amount));
}
