using Crossmember.Builds.Folding;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>An option in effect, its statements settled within the option and numbered.</summary>
public sealed class CompiledOption
{
    public CompiledOption(Slot slot, Option option, KeySpace space)
    {
        (Slot, Resolved) = (slot, ResolvedOption.Of(slot, option));
        Values = [.. Settle(Resolved, space)];
        Overrides = [.. (Resolved.Body.Overrides ?? []).SelectMany(space.Expand)];
        // "Leave off", and an as-found where nothing was there, make nothing exist unless they say so themselves.
        var members = Resolved.Body.Governs ?? (Resolved.Body.Class == OptionClass.None ? [] : slot.Governs);
        Governs = [.. members.SelectMany(m => m.Member == "*" ? space.MembersIn(m.Set) : [space.MemberId(m.Set, m.Member)]).Where(i => i >= 0).Distinct()];
    }

    public Slot Slot { get; }

    public ResolvedOption Resolved { get; }

    public Option Body => Resolved.Body;

    /// <summary>One statement per key: the strongest layer, there the fewest stars, there the latest.</summary>
    public (int Key, Stated Stated)[] Values { get; }

    public HashSet<int> Overrides { get; }

    public int[] Governs { get; }

    private static IEnumerable<(int, Stated)> Settle(ResolvedOption option, KeySpace space)
    {
        var settled = new Dictionary<int, Stated>();
        foreach (var layer in option.Layers)
        {
            var here = new Dictionary<int, (int Stars, Stated Stated)>();
            foreach (var (pattern, stated) in layer)
            {
                var stars = KeyChecks.Stars(pattern);
                foreach (var key in space.Expand(pattern))
                    if (!here.TryGetValue(key, out var rival) || stars <= rival.Stars)
                        here[key] = (stars, stated);
            }
            foreach (var (key, (_, stated)) in here) settled.TryAdd(key, stated);
        }
        // A statement of "no value" has done its work by now: it hid what like would bring.
        return settled.Where(s => !s.Value.Value.IsAbsent).OrderBy(s => s.Key).Select(s => (s.Key, s.Value));
    }
}
