using System.Collections.Immutable;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Places;

/// <summary>A build as it would be with one mass item elsewhere: for looking, nothing is written.</summary>
public static class Moving
{
    /// <summary>The build itself where it has no such item.</summary>
    public static Build With(Build build, MassRef which, Place at)
    {
        if (which.Condition is { } condition)
            return build.Conditions.TryGetValue(condition, out var aboard)
                ? build with { Conditions = build.Conditions.SetItem(condition, aboard with { Items = [.. aboard.Items.Select(i => i.Id == which.Item ? i with { At = at } : i)] }) } : build;
        if (build.Find(which.Slot!) is not { } slot || slot.Find(which.Option!) is not { } option) return build;
        var items = ResolvedOption.Of(slot, option).Body.Masses ?? [];
        if (items.FirstOrDefault(i => i.Id == which.Item) is not { } item) return build;
        var moved = option with { Masses = Over(option.Masses, item with { At = at }) };
        return build with { Slots = [.. build.Slots.Select(s => s.Id == slot.Id ? s with { Options = [.. s.Options.Select(o => o.Id == option.Id ? moved : o)] } : s)] };
    }

    /// <summary>An item that only <c>like</c> brings is stated on the option itself: the part it is like stays where it is.</summary>
    private static ImmutableArray<MassItem> Over(ImmutableArray<MassItem>? own, MassItem item) =>
        own is not { } list ? [item] : list.Any(i => i.Id == item.Id) ? [.. list.Select(i => i.Id == item.Id ? item : i)] : list.Add(item);
}
