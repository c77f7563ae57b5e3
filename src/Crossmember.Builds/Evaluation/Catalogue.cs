using Crossmember.Builds.Parameters;

namespace Crossmember.Builds.Evaluation;

/// <summary>The parameter table with the calculations bound to it, in publishing order.</summary>
public sealed class Catalogue
{
    public Catalogue(ParameterTable table, IEnumerable<Binding> bindings)
    {
        Table = table;
        Bindings = InPublishingOrder([.. bindings]);
    }

    /// <summary>What the program ships with.</summary>
    public static Catalogue Shipped { get; } = new(ParameterTable.Shipped, ShippedBindings.All);

    public ParameterTable Table { get; }

    /// <summary>A publisher always comes before its readers.</summary>
    public IReadOnlyList<Binding> Bindings { get; }

    /// <summary>The key pattern an input reads in a sheet, or null.</summary>
    public string? ParameterOf(string calculation, string input) =>
        Bindings.FirstOrDefault(b => b.Calculation.Id == calculation)?.Inputs.GetValueOrDefault(input);

    private static List<Binding> InPublishingOrder(List<Binding> bindings)
    {
        var publisher = new Dictionary<string, Binding>(StringComparer.Ordinal);
        foreach (var b in bindings)
            foreach (var pattern in b.Publishes.Values)
                if (!publisher.TryAdd(Shape(pattern), b))
                    throw new InvalidOperationException($"{pattern} has two publishers: {publisher[Shape(pattern)].Calculation} and {b.Calculation}");
        var ordered = new List<Binding>();
        var state = new Dictionary<Binding, bool>();
        foreach (var b in bindings.OrderBy(b => b.Calculation.Id, StringComparer.Ordinal)) Visit(b);
        return ordered;

        void Visit(Binding b)
        {
            if (state.TryGetValue(b, out var done))
            {
                if (!done) throw new InvalidOperationException($"{b.Calculation} depends on itself");
                return;
            }
            state[b] = false;
            foreach (var input in b.Inputs.Values)
                foreach (var (pattern, source) in publisher)
                    if (Meet(pattern, Shape(input)))
                        Visit(source);
            state[b] = true;
            ordered.Add(b);
        }
    }

    /// <summary>A pattern with every set and star made alike.</summary>
    private static string Shape(string pattern) => string.Join('.', pattern.Split('.').Select(s => s[0] == '{' ? "*" : s));

    private static bool Meet(string a, string b) => Folding.KeyChecks.Meet(a, b);
}
