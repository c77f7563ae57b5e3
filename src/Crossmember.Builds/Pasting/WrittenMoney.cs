using System.Text.RegularExpressions;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Pasting;

/// <summary>Reads amounts as people write them: 310, $310, 310.00 USD, EUR 12,50.</summary>
public static partial class WrittenMoney
{
    private static readonly Dictionary<string, string> s_signs = new(StringComparer.Ordinal)
    {
        ["$"] = "USD", ["US$"] = "USD", ["C$"] = "CAD", ["A$"] = "AUD", ["NZ$"] = "NZD", ["€"] = "EUR", ["£"] = "GBP", ["¥"] = "JPY",
    };

    /// <summary>Currencies whose people write a plain dollar sign.</summary>
    private static readonly string[] s_dollars = ["USD", "CAD", "AUD", "NZD"];

    /// <param name="books">The currency of the shop, taken where none is written; null: nobody has said it, and none is assumed.</param>
    public static Money? Read(string text, string? books, DecimalMark mark, string path, Faults faults)
    {
        if (Written().Match(text.Trim()) is not { Success: true } m || (m.Groups["before"].Length > 0 && m.Groups["after"].Length > 0) || WrittenNumber.Read(m.Groups["number"].Value, mark) is not { } amount)
            return Refuse(path, $"'{text.Trim()}' is no amount", mark == DecimalMark.Point ? "a number with a point, such as 310.00, and a currency where it is another than the shop's" : "a number with a comma, such as 310,00", faults);
        var written = m.Groups["before"].Value + m.Groups["after"].Value;
        if (books is null && written.Length == 0) return Refuse(path, $"'{text.Trim()}' says no currency, and none is known for this shop", $"the price with its currency, such as {m.Groups["number"].Value} EUR; or say the currency of the shop in Settings", faults);
        if (books is null && written == "$") return Refuse(path, $"'{text.Trim()}' may be in one of several dollars", $"the price with its currency, such as {m.Groups["number"].Value} USD; or say the currency of the shop in Settings", faults);
        var currency = Currency(written, books);
        if (currency is null) return Refuse(path, $"'{written}' is no currency", "three letters such as USD, or a sign such as $", faults);
        if (books is not null && currency != books) return Refuse(path, $"a price in {currency}", $"the shop keeps its books in {books}: convert it and note its rate", faults);
        if (amount < 0) return Refuse(path, $"a price of {text.Trim()}", "zero or more; what comes back has a line of its own", faults);
        if (decimal.Round(amount, 4) != amount) return Refuse(path, $"'{text.Trim()}' has more than four decimals", "at most four", faults);
        if (amount > 1_000_000_000m) return Refuse(path, $"a price of {text.Trim()}", "below a billion", faults);
        return new(amount, currency);
    }

    private static string? Currency(string written, string? books) => written switch
    {
        "" => books,
        "$" when s_dollars.Contains(books) => books,
        _ when s_signs.TryGetValue(written, out var code) => code,
        // Where nothing is known yet "310 pcs" must not found the books in a currency PCS.
        { Length: 3 } when written.All(char.IsAsciiLetter) && (books is not null || Currencies.IsKnown(written.ToUpperInvariant())) => written.ToUpperInvariant(),
        _ => null,
    };

    private static Money? Refuse(string path, string wrong, string right, Faults faults)
    {
        faults.Add(path, wrong, right);
        return null;
    }

    [GeneratedRegex(@"^(?<before>[A-Za-z]{0,3}\p{Sc}|[A-Za-z]{3})?\s*(?<number>[+-]?[\d.,'\u00A0\u202F ]*\d)\s*(?<after>\p{Sc}|[A-Za-z]{3})?$")]
    private static partial Regex Written();
}
