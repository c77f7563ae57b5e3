using System.Text.Json.Nodes;

namespace Crossmember.Builds.Journal;

/// <summary>What reading an old or foreign payload came to.</summary>
public abstract record Lifted
{
    private Lifted() { }

    /// <summary>The payload in the newest shape of its kind.</summary>
    public sealed record Readable(EntryKind Kind, JsonNode Payload) : Lifted;

    /// <summary>Written by a program that knows more than this one: the stream opens read-only and says so.</summary>
    public sealed record Unreadable(string Kind, int Schema, string Why) : Lifted
    {
        public override string ToString() => $"unreadable: written by kind '{Kind}' schema {Schema} ({Why})";
    }
}

/// <summary>Brings old payloads into today's shape when they are read; what is kept is never rewritten.</summary>
public sealed class Lifts
{
    private readonly Func<string, EntryKind?> _find;
    private readonly IReadOnlyDictionary<(string Kind, int From), Func<JsonNode, JsonNode>> _steps;

    /// <param name="find">The kinds this program knows.</param>
    /// <param name="steps">Pure functions from schema n to n + 1 of a kind; every older schema of a known kind needs its step.</param>
    public Lifts(Func<string, EntryKind?> find, IReadOnlyDictionary<(string Kind, int From), Func<JsonNode, JsonNode>> steps) => (_find, _steps) = (find, steps);

    /// <summary>The kinds of this program.</summary>
    public static Lifts Current { get; } = new(EntryKind.Find, new Dictionary<(string, int), Func<JsonNode, JsonNode>>
    {
        // Schema 2 may say how the yes was given; where nobody asked, nothing is said.
        [(EntryKind.ScenarioApproved.Name, 1)] = payload => payload,
    });

    public Lifted Lift(Standing standing) => Lift(standing.Fact.Kind, standing.Schema, standing.Payload);

    public Lifted Lift(string kind, int schema, JsonNode payload)
    {
        if (_find(kind) is not { } known) return new Lifted.Unreadable(kind, schema, "this program does not know the kind");
        if (schema > known.Schema) return new Lifted.Unreadable(kind, schema, $"this program reads it up to schema {known.Schema}");
        if (schema == known.Schema) return new Lifted.Readable(known, payload);
        // Steps get a copy of their own, so that a careless one cannot alter the entry.
        var lifted = payload.DeepClone();
        for (var n = schema; n < known.Schema; n++)
        {
            if (!_steps.TryGetValue((kind, n), out var step)) return new Lifted.Unreadable(kind, schema, $"no step leads from schema {n} to {n + 1}");
            lifted = step(lifted);
        }
        return new Lifted.Readable(known, lifted);
    }

    /// <summary>What in a stream this program cannot read, each kind and schema once; empty where all is well.</summary>
    public IReadOnlyList<Lifted.Unreadable> Unreadable(IEnumerable<Standing> standing) =>
        [.. standing.Select(Lift).OfType<Lifted.Unreadable>().Distinct()];
}
