using System.Globalization;
using System.Text;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Calculations;

/// <summary>Writes the reference of all calculations from their descriptions alone: an index and a page for each area.</summary>
public static class ReferencePages
{
    /// <summary>The name of the index.</summary>
    public const string Index = "README.md";

    /// <summary>Texts by file name.</summary>
    /// <param name="parameterOf">The key of the sheet that an input of a calculation reads, or null; the bindings live where the sheet does.</param>
    public static IReadOnlyDictionary<string, string> Of(IEnumerable<Calculation> calculations, Func<string, string, string?> parameterOf)
    {
        var areas = calculations.GroupBy(c => c.About.Area).OrderBy(a => a.Key, StringComparer.Ordinal).ToList();
        var pages = areas.ToDictionary(a => $"{a.Key}.md", a => Area(a.Key, a, parameterOf), StringComparer.Ordinal);
        pages[Index] = IndexOf(areas);
        return pages;
    }

    /// <summary>An area as a heading.</summary>
    public static string Title(string area) => char.ToUpperInvariant(area[0]) + area[1..].Replace('-', ' ');

    private static string IndexOf(IEnumerable<IGrouping<string, Calculation>> areas)
    {
        var page = new StringBuilder("""
            # Reference of the calculations

            Written from the descriptions in the code; do not edit by hand: `scripts/reference.sh` writes these pages anew, and a test compares them.
            Each can be tried on the [bench](../guide/bench.md) and run by `crossmember calc run ID`; how units are written stands in [units](../units.md).

            """.ReplaceLineEndings("\n"));
        foreach (var area in areas)
        {
            page.Append($"\n## [{Title(area.Key)}]({area.Key}.md)\n\n| id | what it answers |\n|---|---|\n");
            foreach (var c in area) page.Append($"| [`{c.Id}`]({area.Key}.md#{Anchor(c.Id)}) | {Cell(c.About.Title)} |\n");
        }
        return page.ToString();
    }

    private static string Area(string area, IEnumerable<Calculation> calculations, Func<string, string, string?> parameterOf)
    {
        var page = new StringBuilder($"# Reference: {Title(area)}\n\n[All calculations]({Index}). Written from the descriptions in the code by `scripts/reference.sh`.\n");
        foreach (var c in calculations) page.Append(Entry(c, parameterOf));
        return page.ToString();
    }

    private static string Entry(Calculation c, Func<string, string, string?> parameterOf)
    {
        var about = c.About;
        var entry = new StringBuilder($"\n## {c.Id}\n\n**{about.Title}** (version {about.Version}). {about.Purpose}\n\n");
        entry.Append($"Formula: `{about.Formula}`\n\nHolds: {about.Validity}\n\n");
        entry.Append("| input | meaning | unit | asked | holds for | key of the sheet | how to get it |\n|---|---|---|---|---|---|---|\n");
        foreach (var i in c.InputSpecs)
            entry.Append($"| `{i.Name}` | {Cell(i.About.Meaning)} | {UnitOf(i)} | {NeedOf(i)} | {Cell(Definition(i))} | {KeyOf(parameterOf(c.Id, i.Name))} | {Cell(i.About.Measure)} |\n");
        entry.Append("\n| output | meaning | unit |\n|---|---|---|\n");
        foreach (var o in c.OutputSpecs) entry.Append($"| `{o.Name}` | {Cell(o.About.Meaning)} | {(o.Unit is { } u ? $"`{u.Code}`" : "text")} |\n");
        List(entry, "Checks", about.Checks.Select(k => $"`{k.Id}`: {k.Asks}{SenseOf(k)}{NeedsOf(k)}"));
        List(entry, "What moves it", about.Trends.Select(t => TrendOf(c, t)).Concat(about.NoTrends.Select(n => $"`{n.Input}`: no trend, {n.Why}")));
        List(entry, "Worked examples", about.Examples.Select(e => ExampleOf(c, e)));
        List(entry, "Sources", about.Sources);
        List(entry, "Cautions", about.Cautions);
        return entry.ToString();
    }

    private static void List(StringBuilder entry, string heading, IEnumerable<string> items)
    {
        var all = items.ToList();
        if (all.Count == 0) return;
        entry.Append($"\n{heading}:\n");
        foreach (var item in all) entry.Append($"- {item}\n");
    }

    private static string UnitOf(InputSpec i) => i.Form switch
    {
        Form.Text => "text",
        Form.Curve => $"curve, `{i.Unit!.Code}` to `{i.CurveUnit!.Code}`",
        Form.Members when i.Unit is { } u => $"`{u.Code}` of each",
        Form.Members => "text of each",
        _ => $"`{i.Unit!.Code}`",
    };

    private static string NeedOf(InputSpec i) => i.Required ? "needed" : i.DefaultSi is { } d ? $"assumed {Figures.Short(i.Unit!.FromSi(d))}" : "if known";

    private static string Definition(InputSpec i)
    {
        if (i.About.OneOf.Length > 0) return string.Join(" or ", i.About.OneOf);
        if (i.Unit is null) return "";
        var bounds = new List<string>();
        if (double.IsFinite(i.About.Low) || double.IsFinite(i.About.High)) bounds.Add(i.RangeText);
        if (double.IsFinite(i.About.MoreThan)) bounds.Add($"always more than {Figures.Short(i.About.MoreThan)}");
        if (double.IsFinite(i.About.AtLeast)) bounds.Add($"always at least {Figures.Short(i.About.AtLeast)}");
        return string.Join("; ", bounds);
    }

    private static string KeyOf(string? key) => key is null ? "" : $"`{key}`";

    private static string SenseOf(Check k) => k.Sense switch { Sense.AtMost => " (at most the limit)", Sense.AtLeast => " (at least the limit)", _ => "" };

    private static string NeedsOf(Check k) => k.Needs.Length == 0 ? "" : $" Waits for {string.Join(", ", k.Needs.Select(n => $"`{n}`"))}.";

    private static string TrendOf(Calculation c, Trend t)
    {
        var unit = c.InputSpecs[c.InputIndex(t.Input)].Unit!;
        return $"`{t.Input}` up, `{t.Output}` {(t.Sign == '+' ? "up" : "down")} ({Figures.Short(t.Low)} to {Figures.Short(t.High)}{(unit.Code == "1" ? "" : " " + unit.Code)})";
    }

    private static string ExampleOf(Calculation c, Example e)
    {
        var told = e.Outputs.Select(o => (o.Key, o.Value, Unit: c.OutputSpecs[c.OutputIndex(o.Key)].Unit!.Code))
            .Select(o => $"`{o.Key}` {o.Value.ToString("R", CultureInfo.InvariantCulture)}{(o.Unit == "1" ? "" : " " + o.Unit)}");
        return $"`{CatalogueJson.InputOf(e).ToJsonString(Json.Plain)}` gives {string.Join(", ", told)} (to {Figures.Short(100 * e.Tolerance)} %). {e.Source}. *{Known(e.Provenance)}*";
    }

    /// <summary>How an expected number is known, in words.</summary>
    public static string Known(Provenance provenance) => provenance switch
    {
        Provenance.HandbookMemory => "recalled from the named book, not read",
        Provenance.Pinned => "what the program gave before",
        _ => provenance.ToString().ToLowerInvariant(),
    };

    private static string Anchor(string id) => id.Replace(".", "", StringComparison.Ordinal);

    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
