using System.CommandLine;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Calc;

internal static class Describe
{
    public static Verb Make()
    {
        var id = new Argument<string>("ID") { Description = "the id of a calculation" };
        return new("describe", "What a calculation is for, its formula, inputs, outputs, checks and sources.",
            "crossmember calc describe driveline.cruise", "crossmember calc describe tires.load --json")
        {
            Arguments = { id }, Runs = (line, _) => Run(line.GetRequiredValue(id)),
        };
    }

    /// <summary>The calculation of an id, or a fault that names the nearest.</summary>
    public static Outcome With(string id, Func<Calculation, Outcome> work) =>
        CalculationList.Find(id) is { } found ? work(found)
        : new Outcome.Misused($"there is no calculation '{id}'", $"nearest: {Nearest.To(id, CalculationList.All.Select(c => c.Id))}");

    private static Outcome Run(string id) => With(id, c => new Outcome.Result(
        () => CatalogueJson.Of(c, input => Catalogue.Shipped.ParameterOf(c.Id, input)), output => Tell(c, output)));

    private static void Tell(Calculation c, TextWriter output)
    {
        output.WriteLine($"{c.About.Title}  ({c.Id}, version {c.About.Version})");
        output.WriteLine();
        output.WriteLine(c.About.Purpose);
        output.WriteLine("Formula:  " + c.About.Formula);
        output.WriteLine("Holds:    " + c.About.Validity);
        var inputs = new TextTable();
        foreach (var i in c.InputSpecs)
            inputs.Add(i.Name, i.Unit?.Code ?? "text", i.Required ? "needed" : i.DefaultSi is { } d ? $"{Words.Number(i.Unit!.FromSi(d), i.Unit.Code)} unless given" : "if known", i.About.Meaning);
        output.WriteLine("Takes:");
        inputs.Write(output);
        var outputs = new TextTable();
        foreach (var o in c.OutputSpecs) outputs.Add(o.Name, o.Unit?.Code ?? "text", o.About.Meaning);
        output.WriteLine("Gives:");
        outputs.Write(output);
        foreach (var check in c.About.Checks) output.WriteLine($"Asks:     {check.Asks}");
        foreach (var source in c.About.Sources) output.WriteLine($"Source:   {source}");
        foreach (var caution in c.About.Cautions) output.WriteLine($"Caution:  {caution}");
    }
}
