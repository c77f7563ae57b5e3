using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Searching;

/// <summary>Goes through the combinations of a search place by place; where a finding says no, everything behind it is left out at once.</summary>
/// <remarks>Not for two threads at a time: each has its own.</remarks>
internal sealed class SearchWalk
{
    private readonly SearchPlan _plan;
    private readonly int _depth;
    private readonly IReadOnlySet<string> _standing;
    private readonly Value[] _values;
    private readonly int[] _statedBy;
    private readonly int[] _chosen;
    private readonly long[] _behind;
    private readonly SearchStep[][] _steps;
    private readonly Dictionary<SearchStep, StepAnswer?[]> _kept = [];
    private readonly Stack<(int Key, Value Value, int By)>[] _laid;
    private readonly (double Effort, double Margin)[] _soFar;

    private long _prefix;

    private const int Nobody = -1, Elsewhere = -2;

    /// <param name="standing">Findings that say no whatever is chosen: they refuse nobody.</param>
    public SearchWalk(SearchPlan plan, IReadOnlySet<string> standing)
    {
        (_plan, _depth, _standing, Tally) = (plan, Math.Min(2, plan.Places.Length), standing, new(plan.FindingCount));
        var keys = plan.Sheet.Keys;
        _values = [.. keys.Select(k => k.Source == Source.Default ? default : k.Value)];
        _statedBy = [.. keys.Select(k => k.Source is Source.Option or Source.WhatIf or Source.Conflict ? Elsewhere : Nobody)];
        foreach (var key in plan.Places.Where(p => !p.IsStock).SelectMany(p => p.Keys))
            // What the searched items state now is taken off before anything is tried.
            if (_statedBy[key] == Elsewhere && StatedHere(key)) (_values[key], _statedBy[key]) = (default, Nobody);
        _chosen = new int[plan.Places.Length];
        _behind = new long[plan.Places.Length + 1];
        _behind[^1] = 1;
        for (var p = plan.Places.Length - 1; p >= 0; p--) _behind[p] = _behind[p + 1] * plan.Places[p].Candidates.Count;
        _steps = [.. Enumerable.Range(0, plan.Places.Length).Select(p => plan.Steps.Where(s => s.Level == p).ToArray())];
        foreach (var step in plan.Steps.Where(s => s.Kept > 0)) _kept[step] = new StepAnswer?[step.Kept];
        _laid = [.. plan.Places.Select(_ => new Stack<(int, Value, int)>())];
        _soFar = new (double, double)[plan.Places.Length + 1];
        _soFar[0] = (0, double.PositiveInfinity);
    }

    /// <summary>How many beginnings there are: ways to take the first two places.</summary>
    public static int Beginnings(SearchPlan plan) => plan.Places.Take(2).Aggregate(1, (n, p) => n * p.Candidates.Count);

    public SearchTally Tally { get; }

    /// <summary>Every combination that begins so.</summary>
    public void From(int beginning)
    {
        _prefix = beginning;
        Take(0, (int)(beginning * _behind[_depth] / _behind[1]), beginning * _behind[_depth]);
    }

    private void Take(int place, int candidate, long index)
    {
        _chosen[place] = candidate;
        if (Refusal(place, _plan.Places[place].Candidates[candidate]) is { } why) Tally.Out(why, index, _behind[Math.Max(_depth, place + 1)]);
        else if (place + 1 == _plan.Places.Length) Tally.Keep(index, _soFar[place + 1].Effort, _soFar[place + 1].Margin);
        else if (place + 1 < _depth) Take(place + 1, (int)(_prefix % _plan.Places[place + 1].Candidates.Count), index);
        else
            for (var next = 0; next < _plan.Places[place + 1].Candidates.Count; next++)
                Take(place + 1, next, index + (next * _behind[place + 2]));
        Lift(place);
    }

    private string? Refusal(int place, Candidate taken) => Lay(place, taken) ?? Requires(place) ?? Work(place);

    /// <summary>States what the candidate states.</summary>
    /// <returns>Why it cannot be taken here, or null.</returns>
    private string? Lay(int place, Candidate taken)
    {
        var stock = _plan.Places[place].IsStock;
        foreach (var (key, value) in taken.Values)
        {
            // It lies over what an option states, and never over another part.
            if (stock && (_statedBy[key] < 0 || _plan.Places[_statedBy[key]].IsStock)) return SearchTally.NotOffered;
            if (!stock && _statedBy[key] != Nobody) return $"model/conflict[{_plan.Sheet.Plan.Space.KeyName(key)}]";
            _laid[place].Push((key, _values[key], _statedBy[key]));
            (_values[key], _statedBy[key]) = (value, place);
        }
        return null;
    }

    private void Lift(int place)
    {
        while (_laid[place].TryPop(out var was)) (_values[was.Key], _statedBy[was.Key]) = (was.Value, was.By);
    }

    /// <summary>Asked as soon as both sides are known.</summary>
    private string? Requires(int last)
    {
        for (var p = 0; p <= last; p++)
            foreach (var need in _plan.Places[p].Candidates[_chosen[p]].Requires)
            {
                var at = Array.FindIndex(_plan.Places, q => !q.IsStock && q.Slot == need.Slot);
                if (at > last || (p != last && at != last)) continue;
                var option = at >= 0 ? _plan.Places[at].Candidates[_chosen[at]].Option! : _plan.Sheet.Choices[need.Slot].Id;
                if (!need.Options.Contains(option)) return $"model/requires[{_plan.Places[p].Slot},{need.Slot}]";
            }
        return null;
    }

    private string? Work(int place)
    {
        var (effort, margin) = _soFar[place];
        foreach (var step in _steps[place])
        {
            var answer = Answer(step);
            for (var o = 0; o < step.Instance.Publishes.Length; o++)
                if (step.Instance.Publishes[o] is >= 0 and var key && _statedBy[key] == Nobody) _values[key] = answer.Outputs[o];
            if (answer.Killer is { } killer) return killer;
            effort = Math.Max(effort, answer.Effort);
            margin = Math.Min(margin, answer.Margin);
        }
        _soFar[place + 1] = (effort, margin);
        return null;
    }

    private StepAnswer Answer(SearchStep step)
    {
        if (!_kept.TryGetValue(step, out var kept)) return Judge(step);
        var at = 0;
        foreach (var p in step.Places) at = (at * _plan.Places[p].Candidates.Count) + _chosen[p];
        return kept[at] ??= Judge(step);
    }

    private StepAnswer Judge(SearchStep step)
    {
        var inputs = new Value[step.Instance.Inputs.Length];
        for (var i = 0; i < inputs.Length; i++) inputs[i] = Read(step.Instance.Inputs[i]);
        var outcome = step.Instance.Calculation.Run(inputs, Told.Numbers);
        string? killer = null;
        for (var f = 0; f < outcome.Findings.Count; f++)
        {
            if (!step.Judged || !step.Raised[f]) continue;
            var finding = outcome.Findings[f];
            var no = finding.Verdict == Verdict.Fail || (finding.Verdict == Verdict.Unknown && step.KnownBefore[f]);
            ref var sight = ref Tally.Sights[step.FirstFinding + f];
            sight = sight.With(Sight.Of(no, finding.Value));
            if (no && killer is null && !_standing.Contains(step.Ids[f])) killer = step.Ids[f];
        }
        return new(outcome.Outputs, killer, Number(outcome, step.Effort, 0), Number(outcome, step.Margin, double.PositiveInfinity));
    }

    private static double Number(Outcome outcome, int output, double none) => output < 0 ? none : outcome.Outputs[output] is { IsNumber: true } e ? e.Number : double.NaN;

    private Value Read(InputSource source)
    {
        if (!source.Constant.IsAbsent) return source.Constant;
        if (source.Key >= 0) return Default(_values[source.Key], source, source.Key);
        if (source.Map is { } map)
        {
            var items = new List<(string, Value)>(map.Length);
            foreach (var (key, name) in map)
            {
                if (!Lives(key)) continue;
                if (_values[key].IsAbsent) return default;
                items.Add((name, _values[key]));
            }
            return items.Count == 0 ? default : Value.Of(new Members(items));
        }
        return source.MayDefault && source.Spec.DefaultSi is { } own ? Value.Of(own) : default;
    }

    private Value Default(Value value, InputSource source, int key) =>
        value.IsAbsent && source.MayDefault && Lives(key) && _plan.Sheet.Keys[key].Source != Source.Conflict
        && (_plan.Sheet.Plan.Space.PatternOf(key).Default ?? source.Spec.DefaultSi) is { } standIn ? Value.Of(standIn) : value;

    private bool Lives(int key) => Array.TrueForAll(_plan.Sheet.Plan.Space.MembersOf(key), m => _plan.Sheet.Alive[m]);

    private bool StatedHere(int key) =>
        _plan.Sheet.Keys[key].Source == Source.Option
        && _plan.Places.Any(p => !p.IsStock && _plan.Sheet.InEffect[_plan.Sheet.Plan.SlotId(p.Slot)] is { } now && now.Values.Any(v => v.Key == key));

    /// <summary>What an instance says of the candidates that move it.</summary>
    private sealed record StepAnswer(IReadOnlyList<Value> Outputs, string? Killer, double Effort, double Margin);
}
