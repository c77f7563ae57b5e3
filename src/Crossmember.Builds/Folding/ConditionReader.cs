using System.Collections.Immutable;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads the items of a loading condition.</summary>
public static class ConditionReader
{
    /// <param name="r">An object whose <c>items</c> is the list.</param>
    public static ImmutableArray<MassItem> Read(ObjectReader r)
    {
        var items = Items(r, "items");
        r.Done();
        return items;
    }

    /// <summary>The masses listed under a key of an object.</summary>
    public static ImmutableArray<MassItem> Items(ObjectReader r, string key)
    {
        var items = ImmutableArray.CreateBuilder<MassItem>();
        foreach (var (item, pointer) in r.List(key))
        {
            var inner = new ObjectReader(item, pointer, r.Faults);
            if (!inner.IsObject) continue;
            items.Add(OptionReader.MassOf(inner));
            inner.Done();
        }
        foreach (var twice in items.GroupBy(i => i.Id).Where(g => g.Count() > 1))
            r.Faults.Add(r.At(key), $"'{twice.Key}' stands twice", "give each its own name");
        return items.ToImmutable();
    }
}
