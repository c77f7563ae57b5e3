using System.CommandLine;
using Crossmember.Storage;

namespace Crossmember.Cli;

/// <summary>The options that every command takes.</summary>
internal sealed class SharedOptions
{
    public const string JsonName = "--json";

    public Option<string?> Data { get; } = new("--data")
    {
        HelpName = "DIR", Recursive = true, Description = "the folder that holds the shop's records ($CROSSMEMBER_DATA, else the user's data folder)",
    };

    public Option<string?> Database { get; } = new("--database")
    {
        HelpName = "CONNECTION", Recursive = true, Description = "the shop's database by a connection string instead",
    };

    public Option<bool> Json { get; } = new(JsonName) { Recursive = true, Description = "print the machine-readable result and nothing else" };

    public void AddTo(Command root)
    {
        root.Add(Data);
        root.Add(Database);
        root.Add(Json);
    }

    /// <summary>Where the shop is that a command line names.</summary>
    public ShopAddress Address(ParseResult line) => new(line.GetValue(Data) ?? Usual(), line.GetValue(Database));

    private static string Usual()
    {
        if (Environment.GetEnvironmentVariable("CROSSMEMBER_DATA") is { Length: > 0 } named) return named;
        var home = Environment.GetEnvironmentVariable("XDG_DATA_HOME") is { Length: > 0 } data ? data
            : Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".local", "share");
        return Path.Combine(home, "crossmember");
    }
}

/// <summary>Where a shop keeps its records.</summary>
/// <param name="Connection">Null: the database lies in the folder.</param>
internal sealed record ShopAddress(string Folder, string? Connection)
{
    /// <summary>Whether anything was ever kept there. A database that is named is taken to exist.</summary>
    public bool Exists => Connection is not null || File.Exists(Path.Combine(Folder, "shop.db"));

    public OpenShop Open() => Connection is null ? OpenShop.Open(Folder, TimeProvider.System) : OpenShop.Open(Connection, Folder, TimeProvider.System);

    public override string ToString() => Connection ?? Folder;
}
