using System.Collections.Frozen;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Brakes.Limits;

/// <summary>What a rule asks of one test, after <c>brake-rules.csv</c>. SI; null where the rule says nothing.</summary>
/// <param name="Linear">m per km/h of speed in the rule's own form of the distance, s = A v + C v2 with v in km/h: 0.1 is 0.36 s at full speed.</param>
/// <param name="ShareLeast">Share of another stop.</param>
/// <param name="Grade">Rise over run.</param>
/// <param name="MostForce">On the pedal, N.</param>
/// <param name="HandForce">On a lever, N.</param>
/// <param name="Published">Whether the row was read in the rule itself or in what its authority wrote; else it is from memory and never more than a caution.</param>
public sealed record BrakeRule(
    string Rule, string Test, double? Speed, double? Linear, double? Square, double? Deceleration, double? StatedDistance, double? ShareLeast, double? Grade, double? LeastForce,
    double? MostForce, double? HandForce, string Source, bool Published)
{
    /// <summary>The rule that is none: what the calculations then hold things against is common practice.</summary>
    public const string None = "none";

    /// <summary>What a builder may pick: passenger cars and light vehicles, an older light truck's rule, and none.</summary>
    public const string Truck105 = "571.105", Car135 = "571.135", Car13H = "R13-H", Car13 = "R13-M1", Van13 = "R13-N1";

    /// <summary>What every finding by a rule must say.</summary>
    public const string LocalLaw = "Local law judges a conversion.";

    private const double PerHour = 3.6;

    private static readonly ReferenceTable s_table = ReferenceTable.Load("brake-rules.csv");

    private static readonly FrozenDictionary<(string, string), BrakeRule> s_rows = s_table.Rows.Select(Read).ToFrozenDictionary(r => (r.Rule, r.Test));

    public static IEnumerable<BrakeRule> All => s_rows.Values;

    /// <summary>Null where the rule has no such test, or where its row could not be read.</summary>
    public static BrakeRule? Find(string rule, string test) => s_rows.GetValueOrDefault((rule, test));

    /// <summary>Longest stop in m: as stated, or by the rule's form from its speed.</summary>
    public double? Distance => StatedDistance ?? (Speed is { } v && Linear is { } a && Square is { } c ? (a * v * PerHour) + (c * v * PerHour * v * PerHour) : null);

    /// <summary>Deceleration in m/s2 that the rule comes to: as stated, else the one whose v2/(2 d) is the rule's C v2.</summary>
    public double? Demand => Deceleration ?? (Square is { } c ? 1 / (2 * PerHour * PerHour * c) : null);

    /// <summary>Way to a stop in m as the rule counts it, A v and v2/(2 d); null where it states no A.</summary>
    public double? Way(double deceleration) => Speed is { } v && Linear is { } a ? (a * v * PerHour) + (v * v / (2 * deceleration)) : null;

    /// <summary>Deceleration in m/s2 without which a published distance cannot be kept even with no delay at all; null where the distance is from memory.</summary>
    public double? Bare => Published && Speed is { } v && Distance is { } s ? v * v / (2 * s) : null;

    private static BrakeRule Read(string[] row)
    {
        double? N(string column) => s_table.Text(row, column).Length == 0 ? null : s_table.Number(row, column);
        return new(s_table.Text(row, "rule"), s_table.Text(row, "test"), N("speed"), N("linear"), N("square"), N("deceleration"), N("distance"), N("share-least"), N("grade"), N("force-least"),
            N("force-most"), N("hand-most"), s_table.Text(row, "source"), s_table.Text(row, "provenance") == "published");
    }
}
