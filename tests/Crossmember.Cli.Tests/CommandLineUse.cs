using System.Text;
using System.Text.Json.Nodes;

namespace Crossmember.Cli.Tests;

/// <summary>The command line as a person uses it: words in, output, messages and exit code out.</summary>
internal sealed record Used(int Code, string Out, string Error)
{
    public JsonNode Json => JsonNode.Parse(Out)!;
}

/// <summary>A folder of records and files of its own, gone after the test.</summary>
internal sealed class Place : IDisposable
{
    public string Folder { get; } = Directory.CreateTempSubdirectory("crossmember-cli").FullName;

    public string Data => Path.Combine(Folder, "records");

    public string File(string name, string content)
    {
        var path = Path.Combine(Folder, name);
        System.IO.File.WriteAllText(path, content);
        return path;
    }

    /// <summary>Runs with this place's records, whatever the surroundings say.</summary>
    public Used Run(params string[] words) => Run("", words);

    public Used Run(string input, string[] words)
    {
        using var stdout = new StringWriter();
        using var stderr = new StringWriter();
        var code = Program.Run([.. words, "--data", Data], stdout, stderr, new MemoryStream(Encoding.UTF8.GetBytes(input)));
        return new(code, stdout.ToString(), stderr.ToString());
    }

    /// <summary>Everything under the records folder with its content, to see that nothing moved. The write-ahead log is not content.</summary>
    public string Contents()
    {
        if (!Directory.Exists(Data)) return "";
        using var shop = Storage.OpenShop.Open(Data, TimeProvider.System);
        return shop.Store.Heads().Write() + string.Join(';', Directory.EnumerateFiles(Data, "*", SearchOption.AllDirectories).Where(f => f.Contains("attachments", StringComparison.Ordinal)).Order());
    }

    public void Dispose() => Directory.Delete(Folder, true);
}
