using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Ripples;

/// <summary>The difference of two sheets: everything a choice changes, old and new, and why.</summary>
public sealed record Ripple(string From, string To, IReadOnlyList<RippleRow> Rows)
{
    /// <summary>Whether anything fails on the new side, also where it failed before and so has no row.</summary>
    public bool Fails { get; private init; }

    /// <summary>Two sheets of one plan.</summary>
    public static Ripple Between(Sheet from, Sheet to)
    {
        if (!ReferenceEquals(from.Plan, to.Plan)) throw new ArgumentException("sheets of two plans have no numbers in common: compile both builds into one plan", nameof(to));
        var causes = new Causes(from, to);
        IEnumerable<RippleRow> rows =
        [
            .. FindingRows.Of(from, to, causes), .. KeyRows.Of(from, to, causes), .. ResultRows.Of(from, to, causes), .. ContributionRows.Of(from, to, causes),
        ];
        return new(from.Scenario, to.Scenario, [.. rows.OrderBy(r => r.State == RowState.Flipped ? 0 : 1).ThenBy(WorstFirst).ThenBy(r => r.Kind).ThenBy(r => r.Id, StringComparer.Ordinal)])
        {
            Fails = to.Findings().Any(f => f.Finding.Verdict == Verdict.Fail),
        };
    }

    private static int WorstFirst(RippleRow row) => row.State == RowState.Flipped ? -(int)(row.To?.Verdict ?? Verdict.Pass) : 0;

    /// <summary>Beyond rounding: by more than 1e-9 of itself.</summary>
    internal static bool Differ(double? a, double? b) =>
        a is { } x && b is { } y ? Math.Abs(x - y) > 1e-9 * Math.Max(Math.Abs(x), Math.Abs(y)) : a.HasValue != b.HasValue;
}
