using System.CommandLine;
using Crossmember.Builds.Files;
using Crossmember.Builds.Ripples;
using Option = Crossmember.Builds.Slots.Option;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli.Commands.Sheets;

internal static class Ripple
{
    public static Verb Make(SharedOptions shared)
    {
        var build = new Argument<string>("BUILD") { Description = "a build file, or the id of a stored build" };
        var from = new System.CommandLine.Option<string?>("--from") { HelpName = "S", Description = "a scenario, as-found, approved, or approved@ (as it was then); default: approved, else as-found" };
        var to = new System.CommandLine.Option<string?>("--to") { HelpName = "S", Description = "likewise; default: the only scenario, else working" };
        var full = new System.CommandLine.Option<bool>("--full") { Description = "wait for what would follow later (nothing does yet)" };
        return new("ripple", "What changes from one scenario to another, flipped findings first.",
            "crossmember ripple packhorse --from as-found --to working", "crossmember ripple packhorse.json --from working --to carried --json")
        {
            Arguments = { build }, Options = { from, to, full },
            Runs = (line, terminal) => NamedBuild.With(line.GetRequiredValue(build), shared.Address(line), terminal, b => On(b, line.GetValue(from), line.GetValue(to))),
        };
    }

    private static Outcome On(NamedBuild build, string? from, string? to)
    {
        var faults = new Faults();
        from ??= build.Open.Approval is null ? Option.AsFound : Option.Approved;
        if ((to ?? build.Comparing.Default(faults)) is not { } target || build.Comparing.Ripple(from, target, faults) is not { } ripple) return Outcome.Faulty(build.Name, faults);
        return new Outcome.Result(() => RippleJson.Of(ripple), output => RippleText.Write(ripple, output), ripple.Fails);
    }
}

/// <summary>A ripple for reading.</summary>
internal static class RippleText
{
    public static void Write(Builds.Ripples.Ripple ripple, TextWriter output)
    {
        output.WriteLine($"From {ripple.From} to {ripple.To}: {Words.Count(ripple.Rows.Count, "change", "changes")}");
        foreach (var group in ripple.Rows.GroupBy(r => r.State == RowState.Flipped ? "flipped" : r.Kind.ToString().ToLowerInvariant()))
        {
            output.WriteLine();
            output.WriteLine(group.Key);
            var table = new TextTable();
            foreach (var row in group)
                table.Add(row.Id, $"{Side(row.From)} -> {Side(row.To)}", row.Because.Count == 0 ? "" : "because " + string.Join(", ", row.Because));
            table.Write(output);
        }
    }

    private static string Side(Side? side)
    {
        if (side is null) return "nothing";
        var value = side.Number is { } n ? Words.Number(n, side.Unit) : side.Text;
        var verdict = side.Verdict is { } v ? Words.Of(v) : null;
        return value is null ? verdict ?? "don't know" : verdict is null ? value : $"{verdict} ({value})";
    }
}
