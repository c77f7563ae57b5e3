using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>A mass with its first moments; NaN where unknown.</summary>
internal struct Moments(double mass, double x, double y, double z)
{
    public double Mass = mass, X = x, Y = y, Z = z;

    public static Moments Of(double mass, Place? at) =>
        at is { } p ? new(mass, mass * p.X, mass * p.Y, mass * p.Z) : new(mass, double.NaN, double.NaN, double.NaN);

    public void Add(in Moments other, double sign = 1)
    {
        Mass += sign * other.Mass;
        X += sign * other.X;
        Y += sign * other.Y;
        Z += sign * other.Z;
    }
}

/// <summary>The vehicle without anybody on board, in one scenario.</summary>
/// <param name="Kilograms">Null where unknown.</param>
/// <param name="Missing">Slots whose change has no mass on one side; empty also where there is no weighing.</param>
public sealed record BareMass(double? Kilograms, IReadOnlyList<string> Missing, bool Weighed);

/// <summary>Mass(condition) = latest weighing - items of its condition + items of the condition + sum over slots (chosen - fitted then).</summary>
internal sealed class Ledger
{
    private static readonly string[] s_outputs = ["total", "moment-x", "moment-y", "moment-z"];

    private readonly EvaluationPlan _plan;
    private readonly Build _build;
    private readonly Weighing? _weighing;
    private readonly Bits _rests;
    private readonly List<string> _missing = [];
    private Moments _bare;
    private Basis _basis = Basis.Measured;

    public Ledger(EvaluationPlan plan, Build build, CompiledOption?[] inEffect)
    {
        (_plan, _build, _rests) = (plan, build, new(plan.LeafCount));
        // The latest by date; of one day, the one taken last.
        _weighing = build.Weighings.OrderBy(w => w.Date, StringComparer.Ordinal).LastOrDefault();
        if (_weighing is null) return;
        var fitted = Choices.Of(build, _weighing.Fitted);
        var weighed = WeighedState.Of(plan, build, _weighing, fitted);
        _bare = weighed;
        foreach (var item in ItemsOf(_weighing.Condition)) _bare.Add(Moments.Of(item.Kilograms ?? double.NaN, item.At), -1);
        foreach (var slot in build.Slots.OrderBy(s => s.Id, StringComparer.Ordinal))
            Change(slot, plan.Compiled(build, slot, fitted[slot.Id]), inEffect[plan.SlotId(slot.Id)]!, weighed);
    }

    public BareMass Bare() => new(_weighing is null || double.IsNaN(_bare.Mass) ? null : _bare.Mass, _missing, _weighing is not null);

    public void Publish(KeyState[] keys)
    {
        foreach (var condition in _build.Sets.Of("condition"))
        {
            var state = _bare;
            var basis = _basis;
            foreach (var item in ItemsOf(condition))
            {
                state.Add(Moments.Of(item.Kilograms ?? double.NaN, item.At));
                if (item.Basis > basis) basis = item.Basis;
            }
            if (_weighing is null) state = new(double.NaN, double.NaN, double.NaN, double.NaN);
            double[] values = [state.Mass, state.X, state.Y, state.Z];
            for (var i = 0; i < values.Length; i++)
                if (_plan.Space.KeyId($"mass.{condition}.{s_outputs[i]}") is >= 0 and var key)
                    Put(ref keys[key], values[i], basis);
        }
    }

    private void Put(ref KeyState key, double value, Basis basis)
    {
        (key.Exists, key.RestsOn, key.PlusMinus) = (true, _rests, double.NaN);
        if (double.IsNaN(value)) return;
        (key.Value, key.Source, key.Basis) = (Value.Of(value), Source.Calculated, basis);
    }

    private System.Collections.Immutable.ImmutableArray<MassItem> ItemsOf(string? condition) =>
        condition is not null && _build.Conditions.TryGetValue(condition, out var c) ? c.Items : [];

    private void Change(Slot slot, CompiledOption fitted, CompiledOption chosen, in Moments weighed)
    {
        if (SameParts(fitted, chosen)) return;
        _rests.Add(_plan.SlotLeaf(_plan.SlotId(slot.Id)));
        // "Surely below" speaks of the change: it excuses the other side from being weighed.
        var excused = chosen.Body.MassBelow is not null || fitted.Body.MassBelow is not null;
        if (MassesOf(chosen, weighed, excused) is not { } now || MassesOf(fitted, weighed, excused) is not { } then)
        {
            _missing.Add(slot.Id);
            _bare = new(double.NaN, double.NaN, double.NaN, double.NaN);
            return;
        }
        _bare.Add(now);
        _bare.Add(then, -1);
        foreach (var body in new[] { chosen.Body, fitted.Body })
        {
            if (body.MassBelow is not null) _basis = Basis.Assumed;
            foreach (var item in body.Masses ?? [])
                if (item.Basis > _basis)
                    _basis = item.Basis;
        }
    }

    /// <summary>No change: the same option, the same items, or nothing said on either side of what is one part at root.</summary>
    private static bool SameParts(CompiledOption fitted, CompiledOption chosen)
    {
        if (ReferenceEquals(fitted, chosen)) return true;
        Option a = fitted.Body, b = chosen.Body;
        if (a.Masses is { } x && b.Masses is { } y) return a.MassBelow == b.MassBelow && SameItems(x, y);
        return a.Masses is null && b.Masses is null && a.MassBelow is null && b.MassBelow is null && fitted.Resolved.Root == chosen.Resolved.Root;
    }

    internal static bool SameItems(IReadOnlyList<MassItem> x, IReadOnlyList<MassItem> y) =>
        x.Count == y.Count && x.Select(i => (i.Id, i.Kilograms, i.At)).ToHashSet().SetEquals(y.Select(i => (i.Id, i.Kilograms, i.At)));

    /// <summary>Half of "surely less than" counts, at the weighed center of gravity: builders weigh only what moves the scale.</summary>
    private static Moments? MassesOf(CompiledOption option, in Moments weighed, bool excused)
    {
        if (option.Body.Masses is null && option.Body.MassBelow is null) return excused ? default(Moments) : null;
        var sum = default(Moments);
        foreach (var item in (option.Body.Masses ?? []).OrderBy(i => i.Id, StringComparer.Ordinal)) sum.Add(Moments.Of(item.Kilograms ?? double.NaN, item.At));
        if (option.Body.MassBelow is { } below)
        {
            var share = below / 2 / weighed.Mass;
            sum.Add(new(below / 2, weighed.X * share, weighed.Y * share, weighed.Z * share));
        }
        return sum;
    }
}
