using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Architecture.Tests;

/// <summary>The reference says what the descriptions in the code say, no more and no less.</summary>
/// <remarks>With <c>CROSSMEMBER_WRITE_REFERENCE=1</c> the pages are written anew before they are compared: <c>scripts/reference.sh</c> does that.</remarks>
public sealed class ReferenceTests
{
    private const string Folder = "docs/reference";

    private static readonly IReadOnlyDictionary<string, string> s_said = ReferencePages.Of(CalculationList.All, Catalogue.Shipped.ParameterOf);

    public ReferenceTests()
    {
        if (Environment.GetEnvironmentVariable("CROSSMEMBER_WRITE_REFERENCE") != "1") return;
        var folder = Directory.CreateDirectory(Path.Combine(SourceTree.Root, Folder)).FullName;
        foreach (var old in Directory.GetFiles(folder, "*.md")) File.Delete(old);
        foreach (var (name, text) in s_said) File.WriteAllText(Path.Combine(folder, name), text);
    }

    [Fact]
    public void The_reference_is_what_the_descriptions_say_and_scripts_reference_sh_writes_it()
    {
        var there = Directory.GetFiles(Path.Combine(SourceTree.Root, Folder)).ToDictionary(f => Path.GetFileName(f), File.ReadAllText, StringComparer.Ordinal);
        Assert.Equal(s_said.Keys.Order(StringComparer.Ordinal), there.Keys.Order(StringComparer.Ordinal));
        foreach (var (name, text) in s_said) Assert.Equal(text, there[name]);
    }

    [Fact]
    public void Every_calculation_is_told_once_with_all_it_takes_and_gives()
    {
        var entries = s_said.Where(p => p.Key != ReferencePages.Index).SelectMany(p => p.Value.Split("\n## ")[1..]).ToDictionary(e => e[..e.IndexOf('\n', StringComparison.Ordinal)], StringComparer.Ordinal);
        Assert.Equal(CalculationList.All.Select(c => c.Id), entries.Keys.Order(StringComparer.Ordinal));
        foreach (var c in CalculationList.All)
        {
            var entry = entries[c.Id];
            string[] rows = [.. entry.Split('\n').Where(l => l.StartsWith("| `", StringComparison.Ordinal))];
            Assert.Equal(c.InputSpecs.Select(i => i.Name).Concat(c.OutputSpecs.Select(o => o.Name)), rows.Select(r => r.Split('`')[1]));
            Assert.All(c.About.Sources.Concat(c.About.Cautions).Concat(c.About.Checks.Select(k => k.Asks)).Concat(c.About.Examples.Select(e => e.Source)), said => Assert.Contains(said, entry, StringComparison.Ordinal));
            Assert.Contains($"]({c.About.Area}.md#{c.Id.Replace(".", "", StringComparison.Ordinal)})", s_said[ReferencePages.Index], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_row_tells_unit_need_range_key_and_how_to_get_it() =>
        Assert.Contains(
            "| `transferRatio` | transfer case ratio in this range | `1` | assumed 1 | 0.7 to 6; always more than 0 | `transfer.{range}.ratio` | "
            + CalculationList.Find("driveline.engine-speed")!.InputSpecs[4].About.Measure + " |", s_said["driveline.md"], StringComparison.Ordinal);
}
