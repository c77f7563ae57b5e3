using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Web.Features.Settings;

/// <summary>Reads what people type into the shop's settings as the payloads of its entries.</summary>
public static class Typed
{
    /// <summary>Decimals of a percentage: finer taxes are not levied, and a double holds every one of them.</summary>
    private const int PercentDecimals = 4;

    public static JsonObject? Currency(string typed, Faults faults)
    {
        var code = typed.ToUpperInvariant();
        if (code.Length == 3 && code.All(char.IsAsciiLetterUpper)) return new() { ["currency"] = code };
        faults.Add("", $"'{typed}' is no currency code", "three letters (ISO 4217), such as USD or CAD");
        return null;
    }

    /// <summary>An amount with its currency, or without it in the books' own; at most four decimals.</summary>
    /// <param name="books">Null where nobody has said it: then the currency must be typed.</param>
    public static Money? Amount(string typed, string? books, Faults faults)
    {
        // Thousands are set off on price lists; a comma before one or two last figures would be a decimal comma, and is asked about.
        var plain = ThousandsSetOff(typed) ? typed.Replace(",", "", StringComparison.Ordinal) : typed;
        var text = plain.Any(char.IsLetter) || books is null ? plain : $"{plain.Trim()} {books}";
        var wrong = "an amount below zero";
        if (Money.TryParse(text.ToUpperInvariant(), out var money, out _))
        {
            if (money.Amount >= 0) return money;
        }
        // Asked once more as it was typed: that is what the answer has to show.
        else _ = Money.TryParse(text, out _, out wrong);
        faults.Add("", wrong, books is null ? "an amount with its currency, such as 95.00 USD" : $"an amount with a point before the cents, such as 95.50 (in {books})");
        return null;
    }

    public static JsonObject? Rate(string typed, string? books, Faults faults) => Amount(typed, books, faults) is { } rate ? new() { ["rate"] = rate.ToString() } : null;

    /// <summary>A percentage as the exact decimal fraction that is kept: 7.25 becomes 0.0725.</summary>
    public static JsonObject? Percent(string typed, Faults faults)
    {
        var text = typed.TrimEnd('%').Trim();
        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && percent <= 100 && decimal.Round(percent, PercentDecimals) == percent)
            return new() { ["fraction"] = percent / 100 };
        faults.Add("", $"'{typed}' is no percentage", $"a number from 0 to 100 with a point and at most {PercentDecimals} decimals, such as 7.25");
        return null;
    }

    public static JsonObject? Step(string typed, string? books, Faults faults)
    {
        if (Amount(typed, books ?? "USD", faults) is not { } step) return null;
        if (books is not null && step.Currency != books) faults.Add("", $"a step in {step.Currency}", $"the books are kept in {books}");
        else if (step.Amount is > 0 and <= 1000) return new() { ["step"] = step.Amount.ToString(CultureInfo.InvariantCulture) };
        else faults.Add("", $"a step of {typed}", "more than 0 and at most 1000, such as 0.05 or 1");
        return null;
    }

    private static bool ThousandsSetOff(string typed) => System.Text.RegularExpressions.Regex.IsMatch(typed, @"^\s*[1-9][0-9]{0,2}(,[0-9]{3})+(\.[0-9]+)?(\s|$)");
}
