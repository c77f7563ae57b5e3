using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace Crossmember.Architecture.Tests;

/// <summary>A text file of the repository, named from the root with forward slashes.</summary>
public sealed record SourceFile(string Name, string Text)
{
    public string[] Lines => field ??= Text.TrimEnd('\n').Split('\n');

    public int WrittenLines => Lines.Count(l => !string.IsNullOrWhiteSpace(l));

    public SyntaxNode Syntax => field ??= CSharpSyntaxTree.ParseText(Text).GetRoot();

    public bool IsUnder(string folder) => Name.StartsWith(folder + "/", StringComparison.Ordinal);

    public bool EndsWith(params string[] endings) => endings.Any(e => Name.EndsWith(e, StringComparison.OrdinalIgnoreCase));

    /// <summary>Made by a tool from the model of the store, and never edited.</summary>
    public bool IsGenerated => Name.Contains("/Migrations/", StringComparison.Ordinal);

    public string At(SyntaxNode node) => $"{Name}:{node.GetLocation().GetLineSpan().StartLinePosition.Line + 1}";
}

/// <summary>The repository as it lies on disk, without what is built or fetched.</summary>
public static class SourceTree
{
    private static readonly HashSet<string> s_notOurs = ["bin", "obj", "artifacts", "node_modules", ".git", ".vs", ".idea", "TestResults", "BenchmarkDotNet.Artifacts"];
    private static readonly HashSet<string> s_notText = [".git", ".png", ".jpg", ".woff2", ".ttf", ".pdf", ".zip", ".ico", ".db"];

    public static string Root { get; } = FindRoot();

    public static IReadOnlyList<SourceFile> Files { get; } = [.. Walk(new DirectoryInfo(Root)).OrderBy(f => f.Name, StringComparer.Ordinal)];

    public static IReadOnlyList<string> Folders { get; } = [.. Files.SelectMany(f => f.Name.Split('/')[..^1]).Distinct()];

    /// <summary>C# written by hand, under src or tests.</summary>
    public static IEnumerable<SourceFile> Code(string folder) => Files.Where(f => f.IsUnder(folder) && f.EndsWith(".cs") && !f.IsGenerated);

    private static IEnumerable<SourceFile> Walk(DirectoryInfo folder)
    {
        foreach (var file in folder.EnumerateFiles().Where(f => !s_notText.Contains(f.Extension)))
            yield return new(Path.GetRelativePath(Root, file.FullName).Replace('\\', '/'), File.ReadAllText(file.FullName));
        foreach (var inner in folder.EnumerateDirectories().Where(d => !s_notOurs.Contains(d.Name)))
            foreach (var file in Walk(inner)) yield return file;
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Crossmember.slnx"))) return folder.FullName;
        throw new InvalidOperationException("The tests must run from inside the repository.");
    }
}
