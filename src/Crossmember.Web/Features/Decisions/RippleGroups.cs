using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.Decisions;

/// <summary>Rows that say the same of several places: one line on the screen.</summary>
public sealed record RippleLine(string Where, IReadOnlyList<RippleRow> Rows)
{
    public RippleRow First => Rows[0];
}

/// <summary>Rows of one kind and one family of keys.</summary>
/// <param name="Term">The engineer's name of the family.</param>
public sealed record RippleGroup(RowKind Kind, string Term, string Title, IReadOnlyList<RippleLine> Lines);

/// <summary>A knock-on in the order in which people read it: verdicts that change first, then by kind and family.</summary>
/// <param name="Flips">Findings whose verdict changes, and those that come or go with another verdict than good.</param>
public sealed record RippleGroups(IReadOnlyList<RippleGroup> Flips, IReadOnlyList<RippleGroup> Rest)
{
    public static RippleGroups Of(IReadOnlyList<RippleRow> rows, EvaluationPlan plan, Build build)
    {
        var names = new RowNames(plan, build);
        return new(Grouped(rows.Where(ChangesVerdict), names), Grouped(rows.Where(r => !ChangesVerdict(r)), names));
    }

    public static bool ChangesVerdict(RippleRow row) => row.Kind == RowKind.Finding && row.State switch
    {
        RowState.Flipped => true,
        RowState.Appeared => row.To!.Verdict != Verdict.Pass,
        RowState.Gone => row.From!.Verdict != Verdict.Pass,
        _ => false,
    };

    /// <summary>Worse than before; a check that appears is measured against good.</summary>
    public static bool IsWorse(RippleRow row) => ChangesVerdict(row) && (row.To?.Verdict ?? Verdict.Pass) > (row.From?.Verdict ?? Verdict.Pass);

    private static List<RippleGroup> Grouped(IEnumerable<RippleRow> rows, RowNames names) =>
    [
        .. rows.Select(r => (Row: r, Name: names.Of(r))).GroupBy(x => (x.Row.Kind, x.Name.Family))
            .Select(g => new RippleGroup(g.Key.Kind, g.Key.Family, g.First().Name.Title, Lines(g))),
    ];

    private static List<RippleLine> Lines(IEnumerable<(RippleRow Row, RowName Name)> rows) =>
    [
        .. rows.GroupBy(x => (x.Row.State, x.Row.From, x.Row.To, Because: string.Join('\n', x.Row.Because.Select(Family))))
            .Select(g => new RippleLine(string.Join("; ", g.Select(x => x.Name.Where).Where(w => w.Length > 0)), [.. g.Select(x => x.Row)])),
    ];

    /// <summary>Four tires changed by four sizes are changed by "the tire sizes".</summary>
    private static string Family(string because) => because.StartsWith("wheel.", StringComparison.Ordinal) ? string.Join('.', because.Split('.')[3..]) : because;
}
