using System.CommandLine;
using System.Globalization;
using Crossmember.Builds.Searching;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Brakes;

internal static class Search
{
    private const int MostListed = 10_000;

    public static Verb Make(SharedOptions shared)
    {
        var build = new Argument<string>("BUILD") { Description = "a build file, or the id of a stored build" };
        var scenario = new Option<string?>("--scenario") { HelpName = "S", Description = "the scenario whose other choices and loads stand; default: the only one, else working" };
        var best = new Option<int>("--best") { HelpName = "N", Description = "how many of the best are told", DefaultValueFactory = _ => 10 };
        var rejected = new Option<int>("--rejected") { HelpName = "N", Description = "how many of the refused are listed, each with the finding that refused it", DefaultValueFactory = _ => 0 };
        var heat = new Option<bool>("--heat") { Description = "judge heat of every combination, and not only of the best (slow)" };
        return new("search", "Every combination of the brakes that options and stock offer, judged and ranked.",
            "crossmember brakes search packhorse --scenario carried", "crossmember brakes search packhorse.json --rejected 20 --json")
        {
            Arguments = { build }, Options = { scenario, best, rejected, heat },
            Runs = (line, terminal) => NamedBuild.With(line.GetRequiredValue(build), shared.Address(line), terminal,
                b => On(b, line.GetValue(scenario), Math.Clamp(line.GetValue(best), 1, 1000), Math.Clamp(line.GetValue(rejected), 0, MostListed), line.GetValue(heat))),
        };
    }

    private static Outcome On(NamedBuild build, string? scenario, int best, int rejected, bool heat)
    {
        var faults = new Faults();
        if ((scenario ?? build.Comparing.Default(faults)) is not { } name || build.Comparing.Sheet(name, faults) is not { } sheet) return Outcome.Faulty(build.Name, faults);
        var result = BrakeSearch.Of(sheet, heat).Run(best);
        if (result.TooMany)
            return Outcome.Faulty(build.Name, $"{result.Search.Count} combinations", $"fewer than {PartsSearch.MostCombinations}: take options or parts off the lists");
        return new Outcome.Result(() => SearchJson.Of(result, sheet, rejected), output => Write(result, name, sheet.Totals.CostTotal.Currency, rejected, output), result.Passed == 0);
    }

    private static void Write(SearchResult result, string scenario, string currency, int rejected, TextWriter output)
    {
        output.WriteLine($"brakes of {scenario}: {result.Offered} combinations, {result.Passed} without a no");
        if (result.Search.Places.Count == 0) output.WriteLine("  there is nothing to choose between: give the items of the brakes options that state their parts");
        foreach (var (one, place) in result.Best.Select((c, i) => (c, i + 1)))
        {
            output.WriteLine();
            output.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"{place}. pedal {Known(one.Effort, "0")} N, front over rear {(one.Margin is { } m ? $"{m:0.00}" : "don't know")}, {(one.Cost is { } cost ? $"{cost:0.00} {currency}" : "price not known")}, unsprung {(one.UnsprungMass is { } kg ? $"{kg:0.#} kg" : "don't know")}, {one.Watch} to watch"));
            foreach (var line in Told(result.Search, one.Chosen)) output.WriteLine("   " + line);
        }
        if (result.Reasons.Count > 0) output.WriteLine();
        if (result.Reasons.Count > 0) output.WriteLine("refused by");
        foreach (var reason in result.Reasons)
        {
            output.WriteLine($"  {reason.Count} by {reason.Finding}: {reason.Text}");
            output.WriteLine("      for example " + string.Join(", ", Told(result.Search, reason.Example)));
        }
        if (result.Standing.Count > 0) output.WriteLine("a no whatever is chosen here");
        foreach (var no in result.Standing) output.WriteLine($"  {no.Id}: {no.Finding.Text}");
        foreach (var (chosen, finding) in result.Rejected().Take(rejected)) output.WriteLine($"  no: {string.Join(", ", Told(result.Search, chosen))}: {finding}");
        output.WriteLine();
        output.WriteLine("Parts that pass here are a proposal: a qualified brake engineer reviews them, and local law judges a conversion.");
    }

    private static string Known(double value, string format) => double.IsNaN(value) ? "don't know" : value.ToString(format, CultureInfo.InvariantCulture);

    private static IEnumerable<string> Told(PartsSearch search, IReadOnlyList<Candidate> chosen) =>
        chosen.Select((c, p) => (Candidate: c, Place: search.Places[p])).Where(x => !x.Candidate.IsOwn)
            .Select(x => x.Place.IsStock ? $"with {x.Candidate.Title} (stock {x.Candidate.Stock})" : $"{x.Place.Slot}: {x.Candidate.Title} ({x.Candidate.Option})");
}
