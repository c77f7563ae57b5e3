using System.Xml.Linq;

namespace Crossmember.Architecture.Tests;

/// <summary>Arrows point one way: Web, Cli -> Documents, Storage -> Builds -> Planning, Engineering.</summary>
public sealed class LayeringTests
{
    private static readonly Dictionary<string, string[]> s_mayReference = new()
    {
        ["Engineering"] = [],
        ["Planning"] = [],
        ["Builds"] = ["Engineering", "Planning"],
        ["Storage"] = ["Builds", "Engineering", "Planning"],
        ["Documents"] = ["Builds", "Engineering", "Planning"],
        ["Cli"] = ["Documents", "Storage", "Builds", "Engineering", "Planning"],
        ["Web"] = ["Documents", "Storage", "Builds", "Engineering", "Planning"],
    };

    private static IEnumerable<SourceFile> Projects => SourceTree.Files.Where(f => f.EndsWith(".csproj"));

    public static TheoryData<string> ProjectsOfSource => [.. Projects.Where(p => p.IsUnder("src")).Select(p => ShortName(p.Name))];

    [Theory, MemberData(nameof(ProjectsOfSource))]
    public void A_project_references_only_the_layers_beneath_it(string project)
    {
        Assert.True(s_mayReference.ContainsKey(project), $"{project} has no place in the layers: give it a row here, and a decision record.");
        var file = Projects.Single(p => p.Name == $"src/Crossmember.{project}/Crossmember.{project}.csproj");
        var forbidden = References(file).Where(r => !s_mayReference[project].Contains(r)).Select(r => $"{project} -> {r}");
        Rule.NothingIn(forbidden);
    }

    [Fact]
    public void Nothing_but_their_tests_references_the_programs()
    {
        string[] mayTest = ["Cli.Tests", "Web.Tests", "EndToEnd.Tests"];
        var arrows = Projects.Where(p => !mayTest.Contains(ShortName(p.Name)))
            .SelectMany(p => References(p).Where(r => r is "Cli" or "Web").Select(r => $"{ShortName(p.Name)} -> {r}"));
        Rule.NothingIn(arrows);
    }

    [Fact]
    public void Every_project_is_in_the_solution()
    {
        var listed = XDocument.Parse(SourceTree.Files.Single(f => f.Name == "Crossmember.slnx").Text).Descendants("Project")
            .Select(p => p.Attribute("Path")!.Value).Order(StringComparer.Ordinal);
        Assert.Equal(Projects.Select(p => p.Name).Order(StringComparer.Ordinal), listed);
    }

    private static IEnumerable<string> References(SourceFile project) => XDocument.Parse(project.Text).Descendants("ProjectReference")
        .Select(r => ShortName(r.Attribute("Include")!.Value.Replace('\\', '/')));

    private static string ShortName(string path) => Path.GetFileNameWithoutExtension(path).Replace("Crossmember.", "", StringComparison.Ordinal);
}
