using Crossmember.Builds.Evaluation;

namespace Crossmember.Documents.Wording;

/// <summary>What a value of a sheet is from, in words: the same beside a field of the bench and on paper.</summary>
public static class Origins
{
    public const string Tried = "tried in this what-if";
    public const string Usual = "nobody has said: the usual figure stands in";
    public const string OfCalculation = "default of the calculation";
    public const string TwoItems = "two items state it";

    /// <summary>Of a calculated value without a calculation of its own.</summary>
    public const string Ledger = "from the weighing and the masses of the items";

    /// <summary>An option in effect that states a value.</summary>
    public static string Of(CompiledOption stating) => $"{stating.Slot.Title}, {ShopWords.Within(ShopWords.OptionTitle(stating.Slot, stating.Body.Id))}";

    /// <summary>The calculation that publishes a value.</summary>
    public static string Of(InstanceState publisher) => $"calculated: {ShopWords.Within(publisher.Instance.Calculation.About.Title)}";

    /// <summary>The options in effect that state a key; where one overrides the others, that one.</summary>
    public static IReadOnlyList<CompiledOption> Stating(Sheet sheet, int key)
    {
        var stating = sheet.InEffect.OfType<CompiledOption>().Where(o => o.Values.Any(v => v.Key == key)).ToList();
        return stating.Where(o => o.Overrides.Contains(key)).ToList() is [var only] ? [only] : stating;
    }
}
