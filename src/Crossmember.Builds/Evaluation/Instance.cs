using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>One calculation for one tuple of members, compiled: it exists while all its members do.</summary>
public sealed class Instance
{
    private Instance(Binding binding, string id, int[] members, InputSource[] inputs, int[] publishes) =>
        (Binding, Id, Members, Inputs, Publishes) = (binding, id, members, inputs, publishes);

    public Binding Binding { get; }

    public Calculation Calculation => Binding.Calculation;

    /// <summary><c>driveline.engine-speed[gear=1,range=high]</c>, names sorted.</summary>
    public string Id { get; }

    public int[] Members { get; }

    public InputSource[] Inputs { get; }

    /// <summary>The key each output is published under, or -1.</summary>
    public int[] Publishes { get; }

    public static IEnumerable<Instance> Compile(Binding binding, KeySpace space)
    {
        foreach (var members in space.Product(binding.ForEach))
        {
            var own = members.Select(space.Member).ToDictionary(m => m.Set, m => m.Member);
            var id = own.Count == 0 ? binding.Calculation.Id
                : $"{binding.Calculation.Id}[{string.Join(',', own.OrderBy(m => m.Key, StringComparer.Ordinal).Select(m => $"{m.Key}={m.Value}"))}]";
            yield return new(binding, id, members,
                [.. binding.Calculation.InputSpecs.Select(i => InputSource.Compile(i, binding.Inputs.GetValueOrDefault(i.Name), own, space))],
                [.. binding.Calculation.OutputSpecs.Select(o => binding.Publishes.TryGetValue(o.Name, out var p) ? space.KeyId(PutIn(p, own)) : -1)]);
        }
    }

    public static string PutIn(string pattern, IReadOnlyDictionary<string, string> own) =>
        string.Join('.', pattern.Split('.').Select(s => s[0] == '{' && own.TryGetValue(s[1..^1], out var m) ? m : s));
}

/// <summary>Where one input of an instance comes from.</summary>
public sealed class InputSource
{
    private InputSource(InputSpec spec) => Spec = spec;

    public InputSpec Spec { get; }

    /// <summary>The single key, or -1.</summary>
    public int Key { get; private init; } = -1;

    /// <summary>For a starred input: the keys with the joined names of their members, in the order of the sets.</summary>
    public (int Key, string Name)[]? Map { get; private init; }

    /// <summary>A name given as a text.</summary>
    public Value Constant { get; private init; }

    /// <summary>Whether a default may stand in: never where the binding names a set.</summary>
    public bool MayDefault { get; private init; }

    public static InputSource Compile(InputSpec spec, string? pattern, IReadOnlyDictionary<string, string> own, KeySpace space)
    {
        if (pattern is null) return new(spec) { MayDefault = true };
        if (pattern[0] == '{' && pattern[^1] == '}' && !pattern.Contains('.', StringComparison.Ordinal)) return new(spec) { Constant = Value.Of(own[pattern[1..^1]]) };
        var namesSet = pattern.Contains('{', StringComparison.Ordinal) || pattern.Contains('*', StringComparison.Ordinal);
        var key = Instance.PutIn(pattern, own);
        if (!key.Contains('*', StringComparison.Ordinal)) return new(spec) { Key = space.KeyId(key), MayDefault = !namesSet };
        var stars = key.Split('.').Select((s, i) => (s, i)).Where(x => x.s == "*").Select(x => x.i).ToList();
        return new(spec) { Map = [.. space.Expand(key).Select(k => (k, string.Join('.', stars.Select(i => space.KeyName(k).Split('.')[i]))))] };
    }
}
