using System.Collections.Immutable;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>The vehicle without anybody on board, in one scenario.</summary>
/// <param name="Kilograms">Null where unknown.</param>
/// <param name="Missing">Slots whose change has no mass on one side; empty also where there is no weighing.</param>
public sealed record BareMass(double? Kilograms, IReadOnlyList<string> Missing, bool Weighed);

/// <summary>Mass(condition) = latest weighing - items of its condition + items of the condition + sum over slots (chosen - fitted then).</summary>
public sealed class Ledger
{
    /// <summary>The last words of the keys it publishes, in the order of <see cref="MomentErrors"/>.</summary>
    internal static readonly string[] Outputs = ["total", "moment-x", "moment-y", "moment-z"];

    private readonly EvaluationPlan _plan;
    private readonly Build _build;
    private readonly WeighedState? _weighed;
    private readonly Bits _rests;
    private readonly SlotChanges? _changes;
    private readonly ImmutableArray<LedgerEntry> _onBoardThen = [];
    private readonly Dictionary<string, MomentErrors> _errors = new(StringComparer.Ordinal);
    private Basis _basis = Basis.Measured;

    internal Ledger(EvaluationPlan plan, Build build, CompiledOption?[] inEffect)
    {
        (_plan, _build, _rests) = (plan, build, new(plan.LeafCount));
        Weighings = [.. Weighing.InOrder(build.Weighings)];
        if (Weighings.Count == 0) return;
        var weighing = Weighings[^1];
        var fitted = Choices.Of(build, weighing.Fitted);
        _weighed = WeighedState.Of(plan, build, weighing, fitted);
        _onBoardThen = [.. OnBoard.Of(build, weighing).Select(i => LedgerEntry.Of(LedgerPart.WasAboard, i.Owner, null, i.Item))];
        _changes = SlotChanges.Between(plan, build, _weighed.Sum, s => plan.Compiled(build, s, fitted[s.Id]), s => inEffect[plan.SlotId(s.Id)]!);
        foreach (var slot in _changes.Changed) _rests.Add(plan.SlotLeaf(plan.SlotId(slot)));
        foreach (var entry in _changes.Entries.Where(e => e.Basis > _basis)) _basis = entry.Basis;
        Bare = Sum([.. _weighed.Entries, .. _onBoardThen, .. _changes.Entries]);
    }

    /// <summary>In the order of their days; of one day, in the order taken. The last one is the baseline.</summary>
    public IReadOnlyList<Weighing> Weighings { get; }

    internal WeighedState? Weighed => _weighed;

    internal Dictionary<int, (string Condition, int Which)> KeysOf => _plan.LedgerKeys;

    internal Moments Bare { get; } = Moments.Unknown;

    public BareMass BareMass() => new(double.IsNaN(Bare.Mass) ? null : Bare.Mass, _changes?.Missing ?? [], _weighed is { Stands: true });

    /// <summary>Everything that makes up the mass in a condition; what came off or went ashore counts negative. Empty without a weighing.</summary>
    public IReadOnlyList<LedgerEntry> EntriesIn(string condition)
    {
        if (_weighed is null) return [];
        var now = OnBoard.Of(_build, condition).Select(i => LedgerEntry.Of(LedgerPart.Aboard, i.Owner, null, i.Item));
        return [.. _weighed.Entries, .. _changes!.Entries, .. _onBoardThen, .. now];
    }

    /// <summary>What mass and moments of a condition may be off by together; null where the mass is not known.</summary>
    internal MomentErrors? ErrorsIn(string condition) => _errors.GetValueOrDefault(condition);

    internal void Publish(KeyState[] keys)
    {
        if (_weighed is not null) WeighingKeys.Publish(_plan, _weighed, keys);
        foreach (var condition in _build.Sets.Of("condition"))
        {
            var entries = EntriesIn(condition);
            var sum = entries.Count == 0 ? Moments.Unknown : Sum(entries);
            var basis = entries.Where(e => e.Part == LedgerPart.Aboard).Select(e => e.Basis).Append(_basis).Max();
            double[] values = [sum.Mass, sum.X, sum.Y, sum.Z];
            if (!double.IsNaN(sum.Mass))
                _errors[condition] = new(Netted(entries), [.. values.Select(v => !double.IsNaN(v))], (_weighed!.HeightError, _weighed.Sum.Mass));
            for (var i = 0; i < values.Length; i++)
                if (_plan.Space.KeyId($"mass.{condition}.{Outputs[i]}") is >= 0 and var key)
                    Put(ref keys[key], values[i], basis, _errors.GetValueOrDefault(condition)?.Of(i) ?? double.NaN);
        }
    }

    private static List<LedgerEntry> Netted(IReadOnlyList<LedgerEntry> entries)
    {
        List<LedgerEntry> net = [.. entries];
        OnBoard.TakeOutWhatStayed(net);
        return net;
    }

    private void Put(ref KeyState key, double value, Basis basis, double spread)
    {
        (key.Exists, key.RestsOn, key.PlusMinus) = (true, _rests, double.NaN);
        if (double.IsNaN(value)) return;
        (key.Value, key.Source, key.Basis, key.PlusMinus) = (Value.Of(value), Source.Calculated, basis, spread);
    }

    private Moments Sum(IReadOnlyList<LedgerEntry> entries)
    {
        if (_weighed is not { Stands: true } || _changes!.Missing.Count > 0) return Moments.Unknown;
        var sum = default(Moments);
        foreach (var entry in entries) sum.Add(entry);
        return sum;
    }
}
