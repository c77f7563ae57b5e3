using System.Collections.Immutable;

namespace Crossmember.Builds.Slots;

/// <summary>An option with everything that <c>like</c> brings and everything noted on it laid over.</summary>
/// <param name="Body">Lists and scalars after inheritance.</param>
/// <param name="Layers">Statements of values, the strongest layer first; within a layer fewer stars win, then the later entry.</param>
/// <param name="Root">The option at the far end of <c>like</c>; options with one root are the same part as long as neither says otherwise.</param>
public sealed record ResolvedOption(Option Body, ImmutableArray<ImmutableArray<KeyValuePair<string, Stated>>> Layers, string Root)
{
    /// <summary>Resolves <c>like</c>, live and transitive. A cycle or a missing source ends the chain; the rules name it.</summary>
    public static ResolvedOption Of(Slot slot, Option option) => Resolve(slot, option, []);

    private static ResolvedOption Resolve(Slot slot, Option option, HashSet<string> seen)
    {
        var noted = NotedOn(slot, option.Id);
        var own = option.Parameters;
        if (option.Like is null || !seen.Add(option.Id) || slot.Find(option.Like) is not { } source)
            return new(WithDefaults(option), [noted, own], option.Id);
        var from = Resolve(slot, source, seen);
        var inherited = from.Layers;
        // A measurement belongs to the physical part: only the same part, refurbished, keeps it.
        // Every other layer holds what was noted, of the source and of what the source is like in turn.
        if ((option.Class ?? from.Body.Class) != OptionClass.Refurbish)
            inherited = [.. inherited.Select((layer, i) => i % 2 == 0 ? [.. layer.Where(v => v.Value.Basis != Basis.Measured)] : layer)];
        return new(WithDefaults(Over(option, from.Body)), [noted, own, .. inherited], from.Root);
    }

    private static ImmutableArray<KeyValuePair<string, Stated>> NotedOn(Slot slot, string option) =>
        slot.Noted.IsEmpty ? [] : [.. slot.Noted.Where(n => n.Option == option).Select(n => KeyValuePair.Create(n.Pattern, n.Stated))];

    private static Option Over(Option own, Option source)
    {
        T? Scalar<T>(string key, T? mine, T? theirs) => mine is not null ? mine : own.Removed.Contains(key) ? default : theirs;
        ImmutableArray<T>? List<T>(string key, ImmutableArray<T>? mine, ImmutableArray<T>? theirs, Func<T, string> id, Func<T, bool> drops) =>
            own.Removed.Contains(key) ? null : mine is not { } m ? theirs : theirs is not { } t ? [.. m.Where(x => !drops(x))] : Merge(m, t, id, drops);
        return own with
        {
            Title = Scalar("title", own.Title, source.Title),
            Class = own.Class ?? source.Class,
            Governs = Scalar("governs", own.Governs, source.Governs),
            Takes = Scalar("takes", own.Takes, source.Takes),
            Overrides = Scalar("overrides", own.Overrides, source.Overrides),
            Requires = List("requires", own.Requires, source.Requires, q => q.Slot, q => q.Drop),
            Masses = List("masses", own.Masses, source.Masses, m => m.Id, m => m.Drop),
            MassBelow = Scalar("massBelow", own.MassBelow, source.MassBelow),
            Loads = List("loads", own.Loads, source.Loads, l => l.Id, l => l.Drop),
            Prices = List("prices", own.Prices, source.Prices, p => p.Id, p => p.Drop),
            Hours = List("hours", own.Hours, source.Hours, h => h.Trade, h => h.Drop),
            Lead = Scalar("lead", own.Lead, source.Lead),
            Originality = Scalar("originality", own.Originality, source.Id == Option.AsFound ? null : source.Originality),
            Tasks = List("tasks", own.Tasks, source.Tasks, t => t.Id, t => t.Drop),
            Documents = Scalar("documents", own.Documents, source.Documents),
            Fits = Scalar("fits", own.Fits, source.Fits),
        };
    }

    /// <summary>Own items replace those of the same id in their place; new ones follow; drops take away.</summary>
    private static ImmutableArray<T> Merge<T>(ImmutableArray<T> own, ImmutableArray<T> source, Func<T, string> id, Func<T, bool> drops)
    {
        var mine = own.ToDictionary(id);
        var known = source.Select(id).ToHashSet();
        return [.. source.Select(s => mine.GetValueOrDefault(id(s), s)).Concat(own.Where(o => !known.Contains(id(o)))).Where(x => !drops(x))];
    }

    private static Option WithDefaults(Option o) => o with
    {
        Class = o.Class ?? (o.Id == Option.AsFound ? OptionClass.Keep : null),
        Originality = o.Originality ?? (o.Id == Option.AsFound ? 1 : o.Class == OptionClass.None ? 0 : null),
        Masses = o.Masses ?? (o.Class == OptionClass.None && o.MassBelow is null ? [] : null),
    };
}
