using System.Text.RegularExpressions;

namespace Crossmember.Architecture.Tests;

/// <summary>What must not get into the repository. The patterns break their own words up, so that this file does not find itself.</summary>
public sealed class KeptOutTests
{
    [Theory]
    [InlineData("a path of one machine", @"(^|[^A-Za-z0-9._~-])/(w[o]rk|h[o]me|r[o]ot)/")]
    [InlineData("the address of a registry", @"n[u]get\.org|npmj[s]\.(org|com)|d[e]b\.debian\.org")]
    [InlineData("unfinished work", @"NotImpl[e]mentedException|\bTO[D]O\b|\bFIX[M]E\b|coming s[o]on|not implemented y[e]t|placehold[e]r (page|data|value)")]
    [InlineData("how a text came about", @"trans[c]ript|seed doc[u]ment|language mod[e]l|AI ass[i]stant")]
    [InlineData("a skipped test, or one that cannot fail", @"\bSk[i]p *= *""|Assert\.True\(tr[u]e\)|Assert\.Equal\((-?[0-9.]+), *\1\)")]
    [InlineData("an assertion on elapsed time", @"Assert\.[A-Za-z]+\([^;]*(El[a]psed|Stopw[a]tch|TotalMillis[e]conds)")]
    [InlineData("a page that loads from elsewhere", @"(src|href)=""https?://[^""]*\.(js|css|woff2?)""|@imp[o]rt url\(""?https?:")]
    [InlineData("a merge left open", @"^(<<<<<<<|>>>>>>>) ")]
    public void No_file_holds(string what, string pattern)
    {
        var regex = new Regex(pattern, RegexOptions.IgnoreCase);
        var found = SourceTree.Files.SelectMany(f => f.Lines.Select((text, i) => (f.Name, Line: i + 1, Text: text))).Where(l => regex.IsMatch(l.Text));
        Rule.NothingIn(found.Select(l => $"{l.Name}:{l.Line}: {l.Text.Trim()}"), what);
    }

    [Fact]
    public void Lock_files_say_what_was_taken_and_not_from_where() =>
        Rule.NothingIn(SourceTree.Files.Where(f => f.EndsWith("packages.lock.json", "package-lock.json") && f.Text.Contains("://", StringComparison.Ordinal)).Select(f => f.Name));

    [Fact]
    public void No_configuration_names_a_package_source() =>
        Rule.NothingIn(SourceTree.Files.Where(f => f.EndsWith("nuget.config") || (f.EndsWith(".npmrc") && f.Text.Contains("registry=", StringComparison.Ordinal))).Select(f => f.Name));

    [Fact]
    public void Every_project_has_its_lock_file() =>
        Rule.NothingIn(SourceTree.Files.Where(f => f.EndsWith(".csproj")).Select(f => f.Name[..f.Name.LastIndexOf('/')] + "/packages.lock.json")
            .Except(SourceTree.Files.Select(f => f.Name)));
}
