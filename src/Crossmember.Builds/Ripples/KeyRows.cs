using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Ripples;

/// <summary>Rows of parameters, and of the ledger's mass keys.</summary>
internal static class KeyRows
{
    public static IEnumerable<RippleRow> Of(Sheet from, Sheet to, Causes causes)
    {
        var space = from.Plan.Space;
        for (var k = 0; k < from.Keys.Length; k++)
        {
            KeyState a = from.Keys[k], b = to.Keys[k];
            if (!a.Exists && !b.Exists) continue;
            var pattern = space.PatternOf(k);
            var state = !a.Exists ? RowState.Appeared : !b.Exists ? RowState.Gone : RowState.Changed;
            if (!Differ(a, b, state)) continue;
            var own = new Bits(from.Plan.LeafCount);
            own.Add(k);
            yield return new(pattern.IsLedger ? RowKind.Mass : RowKind.Parameter, space.KeyName(k), state,
                a.Exists ? SideOf(a, pattern) : null, b.Exists ? SideOf(b, pattern) : null, causes.OfValues(a.Exists ? a.RestsOn ?? own : null, b.Exists ? b.RestsOn ?? own : null));
        }
    }

    /// <summary>A key in its canonical unit, the way every output tells it.</summary>
    public static Side SideOf(in KeyState key, ParameterPattern pattern) => SideOf(key.Value, pattern);

    public static Side SideOf(Value value, ParameterPattern pattern) =>
        value.IsAbsent ? new(null, null, pattern.Unit?.Code, Verdict.Unknown)
        : value.IsNumber ? new(pattern.Told(value.Number), null, pattern.Unit!.Code, null)
        : new(null, value.Text ?? CurveText(value.Curve!, pattern), value.Curve is null ? null : $"{pattern.Unit}, {pattern.CurveUnit}", null);

    private static string CurveText(Curve curve, ParameterPattern pattern) =>
        string.Join("; ", curve.Points.Select(p => $"{Engineering.Quantities.Figures.Short(pattern.Told(p.X))}, {Engineering.Quantities.Figures.Short(pattern.CurveUnit!.FromSi(p.Y))}"));

    private static bool Differ(in KeyState a, in KeyState b, RowState state)
    {
        if (a.Value.IsAbsent && b.Value.IsAbsent) return false;
        if (state != RowState.Changed) return true;
        return a.Value.IsNumber && b.Value.IsNumber ? Ripple.Differ(a.Value.Number, b.Value.Number) : a.Value != b.Value;
    }
}
