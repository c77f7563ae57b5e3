namespace Crossmember.Architecture.Tests;

/// <summary>A rule of the source tree holds when nothing is found that breaks it; all that is found is told, one a line.</summary>
public static class Rule
{
    public static void NothingIn(IEnumerable<string> found) => NothingIn(found, "Found");

    public static void NothingIn(IEnumerable<string> found, string what)
    {
        var all = found.ToList();
        Assert.True(all.Count == 0, $"{what}:\n{string.Join('\n', all)}");
    }
}
