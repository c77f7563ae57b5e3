using System.CommandLine;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Shop;

internal static class Export
{
    public static Verb Make(SharedOptions shared)
    {
        var build = new Argument<string>("BUILD") { Description = "the id of a stored build" };
        var to = new Option<string>("--out") { HelpName = "F", Required = true, Description = "the file to write: JSON, or zip where there are attachments" };
        return new("export", "Writes a build with its whole journal into one file.", "crossmember export packhorse --out packhorse-2026.json")
        {
            Arguments = { build }, Options = { to }, Runs = (line, _) => Run(line.GetRequiredValue(build), line.GetRequiredValue(to), shared.Address(line)),
        };
    }

    private static Outcome Run(string build, string file, ShopAddress address)
    {
        if (!address.Exists) return Outcome.Faulty(build, "nothing is stored yet", $"import a build first (records would be in {address})");
        using var shop = address.Open();
        var faults = new Faults();
        if (shop.Shelf.Open(build) is null) return Outcome.Faulty(build, "there is no stored build of this id", $"stored: {string.Join(", ", shop.Store.Builds().Select(b => b.Id))}");
        if (shop.Exporting.Export(build, faults) is not { } content) return Outcome.Faulty(build, faults);
        NamedFile.Write(file, content);
        return new Outcome.Result(
            () => new JsonObject { ["format"] = "crossmember.exported/1", ["build"] = build, ["file"] = file, ["bytes"] = content.Length },
            output => output.WriteLine($"{build}: {content.Length} bytes in {file}"));
    }
}
