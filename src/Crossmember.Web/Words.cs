using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Planning;

namespace Crossmember.Web;

/// <summary>What stands on the screen: the words of the shop. The engineer's term stands in the tooltip.</summary>
public static class Words
{
    public const string Name = "Crossmember";
    public const string Today = "Today";
    public const string Builds = "Builds";
    public const string Sheet = "Sheet";
    public const string Decisions = "Decisions";
    public const string Driveline = "Driveline";
    public const string Vehicle = "Vehicle";
    public const string Brakes = "Brakes";
    public const string Paper = "Paper";
    public const string Bench = "Bench";
    public const string TheseInputs = "these inputs";
    public const string Settings = "Settings";
    public const string Customer = "Customer";
    public const string Item = "item";
    public const string WhatIf = "what-if";
    public const string KnockOn = "knock-on";
    public const string WhereFrom = "where from";
    public const string DontKnow = ShopWords.DontKnow;
    public const string AsFound = ShopWords.AsFound;
    public const string LeaveOff = ShopWords.LeaveOff;
    public const string ApprovedNow = ShopWords.ApprovedNow;
    public const string ApprovedThen = ShopWords.ApprovedThen;

    public const string ItemTerm = "slot: a place in the vehicle that something can be chosen for";
    public const string WhatIfTerm = "scenario: a set of choices over what was found";
    public const string KnockOnTerm = "ripple: the difference of two master sheets";
    public const string WhereFromTerm = "basis: measured, published, vendor or assumed";

    public const string Caution = ShopWords.Caution;

    public static string Of(Verdict verdict) => ShopWords.Of(verdict);

    public static string Term(Verdict verdict) => "verdict: " + verdict.ToString().ToLowerInvariant();

    public static string Of(OptionClass? what) => ShopWords.Of(what);

    public static string Of(Basis basis) => ShopWords.Of(basis);

    public static string Of(Certainty certainty) => certainty switch
    {
        Certainty.DoneIt => "done it",
        Certainty.SeenIt => "seen it",
        _ => "guess",
    };

    /// <summary>In the middle of a sentence on hours: "12 h as a guess".</summary>
    public static string Within(Certainty certainty) => certainty switch
    {
        Certainty.DoneIt => "done before",
        Certainty.SeenIt => "seen done",
        _ => "as a guess",
    };

    public static string Of(RowKind kind) => ShopWords.Of(kind);

    /// <summary>A scenario by the name people gave it.</summary>
    public static string Scenario(string id, Build build) => ShopWords.Scenario(id, build);

    public static string OptionTitle(Slot slot, string option) => ShopWords.OptionTitle(slot, option);

    public static string Sentence(string text) => ShopWords.Sentence(text);

    /// <summary>A sentence with its full stop.</summary>
    public static string Stopped(string text) => text.Length == 0 || text[^1] is '.' or '!' or '?' ? text : text + ".";

    /// <summary>What is left to a limit as a share of it, or how far beyond it is.</summary>
    public static string Margin(double margin) => Math.Abs(margin) < 0.0005 ? "right at the limit"
        : $"{(100 * Math.Abs(margin)).ToString(Math.Abs(margin) < 0.1 ? "0.0" : "0", System.Globalization.CultureInfo.InvariantCulture)} % {(margin > 0 ? "left to the limit" : "beyond the limit")}";

    /// <summary>A title in the middle of a sentence: its first letter small, unless it is a word by itself, as in U-bolts.</summary>
    public static string Within(string title) => ShopWords.Within(title);

    /// <summary>A finding that lists what is missing without how to get each: that stands under "To find out".</summary>
    public static string Brief(string text) => ShopWords.Brief(text);

    public static string Count(int n, string one, string many) => ShopWords.Count(n, one, many);
}
