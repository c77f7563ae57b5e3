using System.Text.RegularExpressions;
using Crossmember.Engineering.Calculations;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Crossmember.Architecture.Tests;

/// <summary>What is written stays true: kernels are documented, every calculation has its checks, no link leads nowhere.</summary>
public sealed class DocumentationTests
{
    private static readonly string[] s_remarks = ["Formula:", "Valid:", "Source:", "Example:"];

    private static IEnumerable<(SourceFile File, TypeDeclarationSyntax Type)> EngineeringTypes => SourceTree.Code("src/Crossmember.Engineering")
        .SelectMany(f => f.Syntax.DescendantNodes().OfType<TypeDeclarationSyntax>().Select(t => (f, t)));

    [Fact]
    public void Every_public_type_of_engineering_says_what_it_is()
    {
        // Inputs and Result of a calculation describe themselves, member by member, in their attributes.
        var silent = EngineeringTypes.Where(t => t.Type.Modifiers.Any(SyntaxKind.PublicKeyword) && t.Type.Parent is not TypeDeclarationSyntax && Comment(t.Type).Length == 0);
        Rule.NothingIn(silent.Select(t => $"{t.File.At(t.Type)} {t.Type.Identifier}"));
    }

    [Fact]
    public void Every_calculation_gives_formula_validity_source_and_example()
    {
        var calculations = EngineeringTypes.Where(t => t.Type.BaseList?.Types.ToString().StartsWith("Calculation<", StringComparison.Ordinal) == true).ToList();
        Assert.Equal(CalculationList.All.Count, calculations.Count);
        var lacking = calculations.SelectMany(t => s_remarks.Where(r => !Comment(t.Type).Contains(r, StringComparison.Ordinal)).Select(r => $"{t.File.Name} lacks {r}"));
        Rule.NothingIn(lacking);
    }

    [Fact]
    public void Every_calculation_is_in_the_list_of_checks()
    {
        var checks = SourceTree.Files.Single(f => f.Name == "docs/checks.md").Text;
        Rule.NothingIn(CalculationList.All.Select(c => c.Id).Where(id => !checks.Contains($"`{id}`", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_decision_is_in_the_index()
    {
        var index = SourceTree.Files.Single(f => f.Name == "docs/decisions/README.md").Text;
        var records = SourceTree.Files.Where(f => f.IsUnder("docs/decisions") && !f.EndsWith("README.md")).Select(f => Path.GetFileName(f.Name)).ToList();
        Assert.NotEmpty(records);
        Rule.NothingIn(records.Where(r => !index.Contains($"]({r})", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_decision_has_all_its_parts()
    {
        string[] parts = ["Status:", "Date:", "## Context", "## Options", "## Decision", "## Consequences", "## We would revisit if"];
        var lacking = SourceTree.Files.Where(f => f.IsUnder("docs/decisions") && !f.EndsWith("README.md"))
            .SelectMany(f => parts.Where(p => !f.Lines.Any(l => l.StartsWith(p, StringComparison.Ordinal))).Select(p => $"{f.Name} lacks {p}"));
        Rule.NothingIn(lacking);
    }

    [Fact]
    public void No_link_between_documents_leads_nowhere()
    {
        var dead = from file in SourceTree.Files.Where(f => f.EndsWith(".md"))
                   from Match link in Regex.Matches(file.Text, @"\]\(([^)#\s]+)(#[^)]*)?\)")
                   let target = link.Groups[1].Value
                   where !target.Contains("://", StringComparison.Ordinal) && !target.StartsWith("mailto:", StringComparison.Ordinal)
                   let path = Path.Combine(SourceTree.Root, Path.GetDirectoryName(file.Name)!, target)
                   where !File.Exists(path) && !Directory.Exists(path)
                   select $"{file.Name} -> {target}";
        Rule.NothingIn(dead);
    }

    private static string Comment(SyntaxNode node) => string.Concat(node.GetLeadingTrivia().Where(t => t.HasStructure).Select(t => t.ToFullString()));
}
