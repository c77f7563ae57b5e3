using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web;

/// <summary>What stands on the screen: the words of the shop. The engineer's term stands in the tooltip.</summary>
public static partial class Words
{
    public const string Name = "Crossmember";
    public const string Builds = "Builds";
    public const string Decisions = "Decisions";
    public const string Driveline = "Driveline";
    public const string Settings = "Settings";
    public const string Customer = "Customer";
    public const string Item = "item";
    public const string WhatIf = "what-if";
    public const string KnockOn = "knock-on";
    public const string WhereFrom = "where from";
    public const string DontKnow = "don't know";
    public const string AsFound = "as found";
    public const string LeaveOff = "Leave off";
    public const string ApprovedNow = "approved build, worked out today";
    public const string ApprovedThen = "approved build, as it was then";

    public const string ItemTerm = "slot: a place in the vehicle that something can be chosen for";
    public const string WhatIfTerm = "scenario: a set of choices over what was found";
    public const string KnockOnTerm = "ripple: the difference of two master sheets";
    public const string WhereFromTerm = "basis: measured, published, vendor or assumed";

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

    public static string Term(Verdict verdict) => "verdict: " + verdict.ToString().ToLowerInvariant();

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

    /// <summary>A finding that lists what is missing without how to get each: that stands under "To find out".</summary>
    public static string Brief(string text) => text.StartsWith("Not known: ", StringComparison.Ordinal) ? InBrackets().Replace(text, "") : text;

    [System.Text.RegularExpressions.GeneratedRegex(@" \([^()]*\)")]
    private static partial System.Text.RegularExpressions.Regex InBrackets();

    public static string Count(int n, string one, string many) => n == 1 ? $"1 {one}" : $"{n} {many}";
}
