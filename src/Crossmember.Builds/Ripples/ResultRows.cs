using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Ripples;

/// <summary>Rows of results that are not published under a key.</summary>
internal static class ResultRows
{
    public static IEnumerable<RippleRow> Of(Sheet from, Sheet to, Causes causes)
    {
        for (var i = 0; i < from.Instances.Length; i++)
        {
            InstanceState? a = from.Instances[i], b = to.Instances[i];
            if ((a ?? b) is not { } any || (a is not null && b is not null && ReferenceEquals(a.Outcome, b.Outcome))) continue;
            for (var o = 0; o < any.Instance.Calculation.OutputSpecs.Count; o++)
                if (any.Instance.Publishes[o] < 0 && Row(a, b, any.Instance, o, causes) is { } row)
                    yield return row;
        }
    }

    private static RippleRow? Row(InstanceState? a, InstanceState? b, Instance instance, int output, Causes causes)
    {
        var spec = instance.Calculation.OutputSpecs[output];
        Value x = a?.Outcome.Outputs[output] ?? default, y = b?.Outcome.Outputs[output] ?? default;
        var state = a is null ? RowState.Appeared : b is null ? RowState.Gone : RowState.Changed;
        if (state == RowState.Changed && (x == y || (x.IsNumber && y.IsNumber && !Ripple.Differ(x.Number, y.Number)))) return null;
        var because = state == RowState.Changed ? causes.OfValues(a?.RestsOn, b?.RestsOn) : causes.OfExistence(a?.RestsOn, b?.RestsOn, instance.Members);
        return new(RowKind.Result, $"{instance.Id}.{spec.Name}", state, a is null ? null : SideOf(x, spec), b is null ? null : SideOf(y, spec), because);
    }

    public static Side SideOf(Value value, OutputSpec spec) =>
        value.IsNumber ? new(spec.Unit!.FromSi(value.Number), null, spec.Unit.Code, null)
        : value.Text is { } text ? new(null, text, null, null)
        : new(null, null, spec.Unit?.Code, Verdict.Unknown);
}
