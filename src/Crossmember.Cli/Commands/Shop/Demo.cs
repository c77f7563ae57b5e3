using System.CommandLine;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Cli.Commands.Shop;

internal static class Demo
{
    private const string Prefix = "demo/";

    public static Verb Make()
    {
        var to = new Option<string>("--out") { HelpName = "DIR", Required = true, Description = "the folder to write the build files into" };
        return new("demo", "Writes the demo shop as build files. Everything in it is invented.", "crossmember demo --out demo") { Options = { to }, Runs = (line, _) => Run(line.GetRequiredValue(to)) };
    }

    private static Outcome.Result Run(string folder)
    {
        List<string> written = [];
        foreach (var name in typeof(Demo).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var stream = typeof(Demo).Assembly.GetManifestResourceStream(name)!;
            var file = Path.Combine(folder, name[Prefix.Length..]);
            NamedFile.Write(file, NamedFile.ReadAll(stream));
            written.Add(file);
        }
        return new(() => new JsonObject { ["format"] = "crossmember.demo/1", ["files"] = Json.Texts(written) }, output => written.ForEach(output.WriteLine));
    }
}
