using System.Text.Json.Nodes;

namespace Crossmember.Cli.Commands.Shop;

internal static class Rebuild
{
    public static Verb Make(SharedOptions shared) => new("rebuild", "Writes all projections (lists, search) anew from the journal.", "crossmember rebuild")
    {
        Runs = (line, _) => Run(shared.Address(line)),
    };

    private static Outcome.Result Run(ShopAddress address)
    {
        using var shop = address.Open();
        shop.Store.Rebuild();
        var builds = shop.Store.Builds().Count;
        return new(() => new JsonObject { ["format"] = "crossmember.rebuilt/1", ["builds"] = builds },
            output => output.WriteLine($"Rebuilt from the journal: {Words.Count(builds, "build", "builds")}."));
    }
}
