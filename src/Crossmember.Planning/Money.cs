using System.Globalization;

namespace Crossmember.Planning;

/// <summary>An amount in one currency (ISO 4217), exact. Text form <c>1234.50 USD</c>.</summary>
public readonly record struct Money(decimal Amount, string Currency)
{
    // ISO 4217:2015, minor units other than two among currencies in use.
    private static readonly Dictionary<string, int> s_minorUnits = new(StringComparer.Ordinal)
    {
        ["BIF"] = 0, ["CLP"] = 0, ["DJF"] = 0, ["GNF"] = 0, ["ISK"] = 0, ["JPY"] = 0, ["KMF"] = 0, ["KRW"] = 0, ["PYG"] = 0, ["RWF"] = 0,
        ["UGX"] = 0, ["VND"] = 0, ["VUV"] = 0, ["XAF"] = 0, ["XOF"] = 0, ["XPF"] = 0,
        ["BHD"] = 3, ["IQD"] = 3, ["JOD"] = 3, ["KWD"] = 3, ["LYD"] = 3, ["OMR"] = 3, ["TND"] = 3,
    };

    public static Money Zero(string currency) => new(0, currency);

    /// <summary>Decimals of the currency's smallest coin.</summary>
    public static int Decimals(string currency) => s_minorUnits.GetValueOrDefault(currency, 2);

    public static Money SmallestCoin(string currency) => new(1m / (decimal)Math.Pow(10, Decimals(currency)), currency);

    /// <summary>Rounded to the smallest coin, half away from zero.</summary>
    public Money Rounded() => this with { Amount = Math.Round(Amount, Decimals(Currency), MidpointRounding.AwayFromZero) };

    /// <summary>Rounded to a multiple of a step, half away from zero; without a step, to the smallest coin.</summary>
    public Money Rounded(decimal? step) =>
        step is not { } s ? Rounded() : (this with { Amount = Math.Round(Amount / s, MidpointRounding.AwayFromZero) * s }).Rounded();

    public static Money operator +(Money a, Money b) =>
        a.Currency == b.Currency ? a with { Amount = a.Amount + b.Amount } : throw new InvalidOperationException($"{a.Currency} and {b.Currency} do not add");

    public static Money operator *(Money a, decimal factor) => a with { Amount = a.Amount * factor };

    /// <summary>The amount, or why the text is none. Unit prices may have up to four decimals.</summary>
    public static bool TryParse(string text, out Money money, out string wrong)
    {
        money = default;
        wrong = "";
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length != 2) wrong = $"'{text}' is no amount";
        else if (parts[1].Length != 3 || !parts[1].All(char.IsAsciiLetterUpper)) wrong = $"'{parts[1]}' is no currency code";
        else if (!decimal.TryParse(parts[0], NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount)) wrong = $"'{parts[0]}' is no number";
        else if (decimal.Round(amount, 4) != amount) wrong = $"'{parts[0]}' has more than four decimals";
        else if (Math.Abs(amount) > 1_000_000_000_000m) wrong = $"'{parts[0]}' is beyond any shop";
        else money = new(amount, parts[1]);
        return wrong.Length == 0;
    }

    public override string ToString() =>
        Amount.ToString("F" + Math.Max(Decimals(Currency), DecimalsOf(Amount)), CultureInfo.InvariantCulture) + " " + Currency;

    private static int DecimalsOf(decimal amount) => (amount / 1.000000000000000000000000000000000m).Scale;
}
