using Crossmember.Builds.Evaluation;

namespace Crossmember.Builds.Ripples;

/// <summary>Rows of findings: flipped when the verdict differs, moved when the value or the margin does.</summary>
internal static class FindingRows
{
    public static IEnumerable<RippleRow> Of(Sheet from, Sheet to, Causes causes) => [.. OfInstances(from, to, causes), .. OfModel(from, to, causes)];

    private static IEnumerable<RippleRow> OfInstances(Sheet from, Sheet to, Causes causes)
    {
        for (var i = 0; i < from.Instances.Length; i++)
        {
            InstanceState? a = from.Instances[i], b = to.Instances[i];
            if ((a ?? b) is not { } any || (a is not null && b is not null && ReferenceEquals(a.Outcome, b.Outcome))) continue;
            IReadOnlyList<SheetFinding> x = a is null ? [] : [.. Sheet.FindingsOf(a)], y = b is null ? [] : [.. Sheet.FindingsOf(b)];
            for (var f = 0; f < Math.Max(x.Count, y.Count); f++)
            {
                var (one, other) = (x.ElementAtOrDefault(f), y.ElementAtOrDefault(f));
                var because = one is null || other is null
                    ? causes.OfExistence(one?.RestsOn, other?.RestsOn, any.Instance.Members) : causes.OfValues(one.RestsOn, other.RestsOn);
                if (Row(one, other, because) is { } row) yield return row;
            }
        }
    }

    private static IEnumerable<RippleRow> OfModel(Sheet from, Sheet to, Causes causes)
    {
        var x = from.ModelFindings.ToDictionary(f => f.Id, StringComparer.Ordinal);
        var y = to.ModelFindings.ToDictionary(f => f.Id, StringComparer.Ordinal);
        foreach (var id in x.Keys.Union(y.Keys).Order(StringComparer.Ordinal))
        {
            var (a, b) = (x.GetValueOrDefault(id), y.GetValueOrDefault(id));
            if (Row(a, b, causes.OfChoices(a?.RestsOn, b?.RestsOn)) is { } row) yield return row;
        }
    }

    private static RippleRow? Row(SheetFinding? a, SheetFinding? b, IReadOnlyList<string> because)
    {
        RowState? state = (a, b) switch
        {
            (null, _) => RowState.Appeared,
            (_, null) => RowState.Gone,
            _ when a.Finding.Verdict != b.Finding.Verdict => RowState.Flipped,
            _ when Ripple.Differ(a.Finding.Value, b.Finding.Value) || Ripple.Differ(a.Finding.Margin, b.Finding.Margin) => RowState.Moved,
            _ => null,
        };
        return state is { } s ? new(RowKind.Finding, (a ?? b)!.Id, s, SideOf(a), SideOf(b), because) : null;
    }

    private static Side? SideOf(SheetFinding? f) => f is null ? null : new(f.Finding.Value, null, f.Finding.Unit, f.Finding.Verdict);
}
