namespace Crossmember.Web;

/// <summary>Where the records are kept when nobody says.</summary>
public static class DataFolder
{
    /// <param name="named">From the command line, or null.</param>
    public static string Of(string? named, Func<string, string?> environment)
    {
        if (!string.IsNullOrEmpty(named)) return Path.GetFullPath(named);
        if (environment("CROSSMEMBER_DATA") is { Length: > 0 } own) return Path.GetFullPath(own);
        var shared = environment("XDG_DATA_HOME") is { Length: > 0 } xdg ? xdg : Path.Combine(environment("HOME") ?? ".", ".local", "share");
        return Path.GetFullPath(Path.Combine(shared, "crossmember"));
    }
}
