using System.Text.Json.Nodes;

namespace Crossmember.Builds.Templates;

/// <summary>An item that vehicles of a type usually have.</summary>
/// <param name="Governs">Members of sets that exist because something is chosen here, as in <c>gear.*</c>; empty: none.</param>
public sealed record TemplateItem(string Id, string? Parent, string Title, double Weight, string Governs);

/// <summary>The usual items of a type of vehicle: where a new build begins. The first is the vehicle itself.</summary>
public sealed record ItemTemplate(string Id, IReadOnlyList<TemplateItem> Items)
{
    /// <summary>The most gears and the most ranges that are asked for.</summary>
    public const int MostGears = 8, MostRanges = 2;

    /// <summary>Nothing but the vehicle itself.</summary>
    public static ItemTemplate Empty { get; } = new("empty", [new(Slots.Slot.Root, null, "Empty", 0, "")]);

    /// <summary>What the type is called.</summary>
    public string Title => Items[0].Title;

    /// <summary>The ordered sets of a build: axles and sides are the usual ones.</summary>
    /// <param name="gears">Forward gears of the gearbox.</param>
    /// <param name="ranges">1, or 2 with a low one.</param>
    public static JsonObject Sets(int gears, int ranges) => new()
    {
        ["axle"] = Texts("front", "rear"),
        ["side"] = Texts("left", "right"),
        ["gear"] = Texts([.. Enumerable.Range(1, Math.Clamp(gears, 1, MostGears)).Select(g => $"{g}")]),
        ["range"] = ranges < 2 ? Texts("high") : Texts("high", "low"),
        ["condition"] = Texts("empty", "loaded"),
    };

    private static JsonArray Texts(params IEnumerable<string> members) => [.. members.Select(m => (JsonNode?)m)];
}
