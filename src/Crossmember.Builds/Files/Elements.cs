using System.Text.Json;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Files;

/// <summary>Counts the elements of a build file: objects in lists, and keys of maps that hold more than a fixed few.</summary>
internal static class Elements
{
    /// <summary>The firm limit of every format.</summary>
    public const int Most = 100_000;

    public static bool AreFewEnough(JsonElement file, Faults faults)
    {
        var count = file.TryGetProperty("journal", out var journal) && journal.ValueKind == JsonValueKind.Array ? journal.GetArrayLength() : Count(file, true);
        if (count <= Most) return true;
        faults.Add("", $"the file has {count} elements", $"at most {Most}");
        return false;
    }

    /// <param name="top">Documents are files of their own, which their own readers count.</param>
    private static int Count(JsonElement e, bool top) => e.ValueKind switch
    {
        JsonValueKind.Array => e.EnumerateArray().Sum(item => (item.ValueKind == JsonValueKind.Object ? 1 : 0) + Count(item, false)),
        JsonValueKind.Object => e.EnumerateObject().Where(m => !top || m.Name != "documents").Sum(m => Keys(m) + Count(m.Value, false)),
        _ => 0,
    };

    private static int Keys(JsonProperty member) =>
        member.Name is "parameters" or "choices" or "whatIf" or "conditions" or "rates" or "driver" or "uses" && member.Value.ValueKind == JsonValueKind.Object
            ? member.Value.GetPropertyCount() : 0;
}
