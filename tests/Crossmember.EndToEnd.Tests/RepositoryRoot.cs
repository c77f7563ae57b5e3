namespace Crossmember.EndToEnd.Tests;

/// <summary>Where the root scripts lie.</summary>
public static class RepositoryRoot
{
    public static string Folder { get; } = Find();

    public static string Script(string name) => Path.Combine(Folder, name);

    private static string Find()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Crossmember.slnx"))) folder = folder.Parent!;
        return folder.FullName;
    }
}
