using System.Text.Json;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads a task of an option. Its links may name tasks of the same option and milestones of the shop only, so that swapping options never leaves one dangling.</summary>
public static class TaskReader
{
    public static TaskLine Read(ObjectReader r, string id)
    {
        _ = r.OptionalText("title");
        _ = r.OptionalText("trade");
        _ = r.OptionalText("vendor");
        _ = r.OptionalText("calendar");
        var duration = r.OptionalNumber("duration");
        if (duration is < 0) r.Faults.Add(r.At("duration"), "a duration below zero", "zero or more whole hours");
        if (r.Object("distribution") is { } d) CostReader.DistributionOf(d);
        _ = r.OptionalFlag("unbroken");
        _ = r.OptionalFlag("outside");
        foreach (var (_, value, pointer) in r.Map("uses").Concat(r.Map("driver"))) r.NumberOf(value, pointer);
        return new(id, duration, string.Join("; ", Links(r, "after").Concat(Links(r, "before"))));
    }

    private static IEnumerable<string> Links(ObjectReader r, string key)
    {
        foreach (var (item, pointer) in r.List(key))
        {
            if (item.ValueKind == JsonValueKind.String)
            {
                yield return $"{key} {item.GetString()}";
                continue;
            }
            var link = new ObjectReader(item, pointer, r.Faults);
            var named = link.OptionalText("milestone") ?? link.Text("task");
            _ = link.OptionalText("type");
            _ = link.OptionalNumber("lag");
            _ = link.OptionalNumber("maximum");
            link.Done();
            yield return $"{key} {named}";
        }
    }
}
