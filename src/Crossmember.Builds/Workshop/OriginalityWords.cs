using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Workshop;

/// <summary>How much of an item stays old, in words. The shares are common practice, no source; what an option's own words give is labelled as assumed.</summary>
public static class OriginalityWords
{
    /// <summary>Stands in the note of an option whose share nobody has said.</summary>
    public const string Assumed = "originality assumed from the class";

    /// <summary>From the old to the new.</summary>
    public static IReadOnlyList<(string Words, double Share)> All { get; } =
        [("as it was", 1), ("same kind", 0.8), ("modern kind, hidden", 0.5), ("visible change", 0.2)];

    /// <summary>The share of a class where nobody has said one.</summary>
    public static double Usual(OptionClass kind) => kind switch
    {
        OptionClass.Keep or OptionClass.Refurbish => 1,
        OptionClass.Replace or OptionClass.Make => 0.8,
        OptionClass.Upgrade => 0.2,
        _ => 0,
    };

    /// <summary>The words for a share; null where none say just that.</summary>
    public static string? Of(double? share) => All.FirstOrDefault(w => w.Share == share).Words;
}
