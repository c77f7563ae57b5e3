using System.CommandLine;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Calc;

internal static class Run
{
    public static Verb Make()
    {
        var id = new Argument<string>("ID") { Description = "the id of a calculation" };
        var file = new Argument<string>("FILE") { Arity = ArgumentArity.ZeroOrOne, Description = "a JSON file of inputs; - or none: standard input", DefaultValueFactory = _ => "-" };
        return new("run", "Runs one calculation on inputs in JSON and shows its working.",
            "echo '{\"roadSpeed\":\"65 mph\",\"tireDiameter\":\"33 in\",\"axleRatio\":4.1,\"gearRatio\":1}' | crossmember calc run driveline.engine-speed",
            "echo '{\"size\":\"33x10.50R15LT\"}' | crossmember calc run tires.dimensions - --json")
        {
            Arguments = { id, file }, Runs = (line, terminal) => Describe.With(line.GetRequiredValue(id), c => On(c, line.GetRequiredValue(file), terminal)),
        };
    }

    private static Cli.Outcome On(Calculation calculation, string file, Terminal terminal)
    {
        var faults = new Faults();
        var content = file == "-" ? NamedFile.ReadAll(terminal.In) : NamedFile.Read(file, faults);
        if (content is null || ArgumentReader.Read(calculation, content, faults) is not { } arguments) return Cli.Outcome.Faulty(file, faults);
        var outcome = calculation.Run(arguments, working: true);
        return new Cli.Outcome.Result(() => ResultJson.Of(calculation, outcome), output => Tell(calculation, outcome, output), outcome.Findings.Any(f => f.Verdict == Verdict.Fail));
    }

    private static void Tell(Calculation calculation, Engineering.Calculations.Outcome outcome, TextWriter output)
    {
        output.WriteLine(calculation.About.Title);
        var results = new TextTable();
        for (var i = 0; i < outcome.Outputs.Count; i++) results.Add(calculation.OutputSpecs[i].About.Meaning, Told(calculation.OutputSpecs[i], outcome.Outputs[i]));
        results.Write(output);
        foreach (var f in outcome.Findings.OrderByDescending(f => f.Verdict)) output.WriteLine($"  {Words.Of(f.Verdict)}: {f.Text}");
        if (outcome.Working.Count > 0) output.WriteLine("Working:");
        foreach (var l in outcome.Working) output.WriteLine($"  {l.Symbol} = {l.Formula} = {l.Substituted} = {Words.Number(l.Value, l.Unit)}");
        foreach (var m in outcome.Missing.Where(m => m.Measure.Length > 0)) output.WriteLine($"Missing: {m.Input}: {m.Measure}");
        foreach (var c in outcome.Cautions) output.WriteLine($"Caution: {c}");
        foreach (var s in calculation.About.Sources) output.WriteLine($"Source: {s}");
    }

    private static string Told(OutputSpec spec, Value value) =>
        value.IsNumber ? Words.Number(spec.Unit!.FromSi(value.Number), spec.Unit.Code)
        : value.Members is { } members ? string.Join(", ", members.Items.Select(i => $"{i.Name}: {Told(spec, i.Value)}"))
        : value.Text ?? "don't know";
}
