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
        var items = ImmutableArray.CreateBuilder<MassItem>();
        foreach (var (item, pointer) in r.List("items"))
        {
            var inner = new ObjectReader(item, pointer, r.Faults);
            if (!inner.IsObject) continue;
            items.Add(OptionReader.MassOf(inner));
            inner.Done();
        }
        foreach (var twice in items.GroupBy(i => i.Id).Where(g => g.Count() > 1))
            r.Faults.Add(r.At("items"), $"'{twice.Key}' stands twice", "give each its own name");
        r.Done();
        return items.ToImmutable();
    }
}
