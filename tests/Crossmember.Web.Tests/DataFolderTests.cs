namespace Crossmember.Web.Tests;

public sealed class DataFolderTests
{
    private static Func<string, string?> Environment(params (string Name, string Value)[] set) => name => set.FirstOrDefault(s => s.Name == name).Value;

    /// <summary>XDG Base Directory Specification 0.8: $XDG_DATA_HOME, by default $HOME/.local/share.</summary>
    [Fact]
    public void What_is_named_wins_then_our_own_variable_then_the_users_data_folder()
    {
        var all = Environment(("CROSSMEMBER_DATA", "/own"), ("XDG_DATA_HOME", "/xdg"), ("HOME", "/user"));
        Assert.Equal("/named", DataFolder.Of("/named", all));
        Assert.Equal("/own", DataFolder.Of(null, all));
        Assert.Equal("/xdg/crossmember", DataFolder.Of("", Environment(("XDG_DATA_HOME", "/xdg"), ("HOME", "/user"))));
        Assert.Equal("/user/.local/share/crossmember", DataFolder.Of(null, Environment(("HOME", "/user"))));
    }
}
