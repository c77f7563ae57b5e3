using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Starting;

/// <summary>The invented vehicles that the program carries.</summary>
public static class DemoShop
{
    private const string Prefix = "demo/";

    public static IReadOnlyList<string> Files { get; } =
        [.. typeof(DemoShop).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    /// <summary>Imports every build of the demo that is not here yet.</summary>
    public static void TakeIn(ShopDesk desk, Faults faults)
    {
        foreach (var name in Files)
        {
            using var stream = typeof(DemoShop).Assembly.GetManifestResourceStream(name)!;
            using var content = new MemoryStream();
            stream.CopyTo(content);
            desk.Import(content.GetBuffer().AsMemory(0, (int)content.Length), faults);
        }
    }
}
