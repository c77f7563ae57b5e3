using System.Text.RegularExpressions;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Documents.Wording;

/// <summary>The words of the shop, the same on the screen and on paper.</summary>
public static partial class ShopWords
{
    public const string DontKnow = "don't know";
    public const string AsFound = "as found";
    public const string LeaveOff = "Leave off";
    public const string ApprovedNow = "approved build, worked out today";
    public const string ApprovedThen = "approved build, as it was then";

    public const string Caution =
        "Brakes, steering, structure, lifting, recovery, electrical and fuel work can hurt people. These numbers do not replace an inspection: "
        + "local rules and a qualified or licensed person decide before the vehicle is used.";

    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Pass => "good",
        Verdict.Caution => "watch",
        Verdict.Fail => "no",
        _ => DontKnow,
    };

    public static string Of(OptionClass? what) => what switch
    {
        OptionClass.Keep => "keep",
        OptionClass.Refurbish => "refurbish",
        OptionClass.Replace => "replace",
        OptionClass.Upgrade => "upgrade",
        OptionClass.Make => "make here",
        OptionClass.None => "nothing there",
        _ => "",
    };

    public static string Of(Basis basis) => basis.ToString().ToLowerInvariant();

    public static string Of(RowKind kind) => kind switch
    {
        RowKind.Finding => "Checks",
        RowKind.Parameter => "Values",
        RowKind.Result => "Results",
        RowKind.Mass => "Mass",
        RowKind.Load => "Electrical loads",
        RowKind.Cost => "Cost",
        RowKind.Hours => "Hours",
        RowKind.Originality => "Originality",
        RowKind.Task => "Work",
        _ => "Dates",
    };

    /// <summary>A scenario by the name people gave it.</summary>
    public static string Scenario(string id, Build build) => id switch
    {
        Option.AsFound => AsFound,
        Option.Approved => ApprovedNow,
        "approved@" => ApprovedThen,
        _ => build.Scenarios.TryGetValue(id, out var s) && s.Title is { Length: > 0 } title ? title : id,
    };

    public static string OptionTitle(Slot slot, string option) =>
        option == Option.None ? LeaveOff
        : slot.Find(option) is { } found && ResolvedOption.Of(slot, found).Body.Title is { Length: > 0 } title ? title
        : option == Option.AsFound ? "As found" : option;

    public static string Sentence(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..].TrimEnd('.');

    /// <summary>A title in the middle of a sentence: its first letter small, unless it is a word by itself, as in U-bolts.</summary>
    public static string Within(string title) => title.Length > 1 && char.IsLower(title[1]) ? char.ToLowerInvariant(title[0]) + title[1..] : title;

    /// <summary>A finding that lists what is missing without how to get each: that stands under what is to be found out.</summary>
    public static string Brief(string text) => text.StartsWith("Not known: ", StringComparison.Ordinal) ? InBrackets().Replace(text, "") : text;

    [GeneratedRegex(@" \([^()]*\)")]
    private static partial Regex InBrackets();

    public static string Count(int n, string one, string many) => n == 1 ? $"1 {one}" : $"{n} {many}";
}
