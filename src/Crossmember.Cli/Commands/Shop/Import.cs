using System.CommandLine;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Shop;

internal static class Import
{
    public static Verb Make(SharedOptions shared)
    {
        var files = new Argument<string[]>("FILE") { Arity = ArgumentArity.OneOrMore, Description = "build files of either form, JSON or zip" };
        var into = new Option<string?>("--into") { HelpName = "BUILD", Description = "another id for a sheet form" };
        return new("import", "Takes build files into the shop's records, each whole or not at all.", "crossmember import packhorse.json", "crossmember import packhorse.json --into packhorse-spare")
        {
            Arguments = { files }, Options = { into }, Runs = (line, _) => Run(line.GetRequiredValue(files), line.GetValue(into), shared.Address(line)),
        };
    }

    private static Outcome Run(string[] files, string? into, ShopAddress address)
    {
        if (into is not null && files.Length > 1) return new Outcome.Misused("--into names one build, but there are several files", "import them one by one");
        // Everything is read before the first is kept, so that a mistyped name stops nothing half way.
        var read = files.Select(f => (Name: f, Faults: new Faults())).Select(f => (f.Name, f.Faults, File: Open(f.Name, f.Faults))).ToList();
        var imported = new List<(string Name, Imported Result)>();
        if (read.Exists(r => r.File is not null))
        {
            using var shop = address.Open();
            foreach (var (name, faults, file) in read)
                if (file is not null && shop.Importing().Import(file, into, faults) is { } result)
                    imported.Add((name, result));
        }
        List<FileFault> wrong = [.. read.SelectMany(r => r.Faults.List.Select(f => new FileFault(r.Name, f)))];
        List<string> told = [.. imported.Select(i => Line(i.Name, i.Result))];
        return wrong.Count > 0 ? new Outcome.Refused(wrong, told) : new Outcome.Result(() => Report(imported), output => told.ForEach(output.WriteLine));
    }

    private static OpenedFile? Open(string name, Faults faults) =>
        NamedFile.Read(name, faults) is { } content ? BuildFile.Read(content, Catalogue.Shipped, faults) : null;

    private static string Line(string name, Imported result) =>
        $"{name}: {result.Id}, {Words.Count(result.Appended, "new entry", "new entries")}" + string.Concat(result.Remarks.Select(r => "; " + r));

    private static JsonObject Report(List<(string Name, Imported Result)> imported) => new()
    {
        ["format"] = "crossmember.imported/1",
        ["imported"] = Json.List(imported, i => new JsonObject { ["file"] = i.Name, ["build"] = i.Result.Id, ["appended"] = i.Result.Appended, ["remarks"] = Json.Texts(i.Result.Remarks) }),
    };
}
