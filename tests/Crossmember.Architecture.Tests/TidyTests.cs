using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Crossmember.Architecture.Tests;

/// <summary>What CONTRIBUTING.md promises of the size and shape of code, measured.</summary>
public sealed class TidyTests
{
    private const int LongMethod = 70; // lines

    private static IEnumerable<SourceFile> AllCode => SourceTree.Code("src").Concat(SourceTree.Code("tests"));

    [Fact]
    public void No_file_written_by_hand_is_over_500_lines() => Rule.NothingIn(AllCode.Where(f => f.Lines.Length > 500).Select(f => $"{f.Name}: {f.Lines.Length} lines"));

    [Fact]
    public void No_page_is_over_150_lines() =>
        Rule.NothingIn(SourceTree.Files.Where(f => f.EndsWith(".razor") && f.Lines.Length > 150).Select(f => $"{f.Name}: {f.Lines.Length} lines"));

    [Fact]
    public void Fewer_than_one_method_in_a_hundred_is_long()
    {
        var methods = AllCode.SelectMany(f => f.Syntax.DescendantNodes().OfType<BaseMethodDeclarationSyntax>().Select(m => (File: f, Method: m))).ToList();
        var tooLong = methods.Where(m => LineCount(m.Method) > LongMethod).Select(m => $"{m.File.At(m.Method)}: {LineCount(m.Method)} lines").ToList();
        Assert.True(tooLong.Count * 100 < methods.Count, $"{tooLong.Count} of {methods.Count} methods are over {LongMethod} lines:\n{string.Join('\n', tooLong)}");
    }

    [Fact]
    public void There_are_six_lines_of_test_for_ten_lines_of_source()
    {
        var source = SourceTree.Files.Where(f => f.IsUnder("src") && f.EndsWith(".cs", ".razor") && !f.IsGenerated).Sum(f => f.WrittenLines);
        var tests = SourceTree.Code("tests").Sum(f => f.WrittenLines);
        Assert.True(tests >= 0.6 * source, $"{tests} lines of test for {source} lines of source: {(double)tests / source:0.00}");
    }

    [Fact]
    public void Only_a_composition_root_catches_whatever_comes()
    {
        var nets = SourceTree.Code("src").Where(f => !f.EndsWith("/Program.cs"))
            .SelectMany(f => f.Syntax.DescendantNodes().OfType<CatchClauseSyntax>().Where(CatchesAll).Select(f.At));
        Rule.NothingIn(nets);
    }

    [Fact]
    public void Folders_are_named_by_what_they_hold()
    {
        string[] rummageDrawers = ["Common", "Helpers", "Helper", "Utils", "Util", "Utilities", "Misc"];
        Rule.NothingIn(SourceTree.Folders.Intersect(rummageDrawers, StringComparer.OrdinalIgnoreCase));
    }

    private static int LineCount(SyntaxNode node)
    {
        var span = node.GetLocation().GetLineSpan();
        return span.EndLinePosition.Line - span.StartLinePosition.Line + 1;
    }

    private static bool CatchesAll(CatchClauseSyntax clause) =>
        clause.Filter is null && clause.Declaration?.Type.ToString() is null or "Exception" or "System.Exception";
}
