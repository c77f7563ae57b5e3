using Crossmember.Engineering.Reading;

namespace Crossmember.Cli;

/// <summary>Reads files that a command line names. A name that leads nowhere is the caller's fault; a file that cannot be read is the machine's.</summary>
internal static class NamedFile
{
    public static byte[]? Read(string name, Faults faults)
    {
        if (Directory.Exists(name)) faults.Add("", "this is a folder", "name a file");
        else if (!File.Exists(name)) faults.Add("", "there is no such file", "check the name and the folder you are in");
        else if (new FileInfo(name).Length > JsonText.LargestBytes && !IsZip(name)) faults.Add("", "the file is larger than any model", "64 MiB is the most");
        return faults.Any ? null : File.ReadAllBytes(name);
    }

    public static byte[] ReadAll(Stream stream)
    {
        using var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }

    /// <summary>Whole or not at all: written beside and moved into place.</summary>
    public static void Write(string name, byte[] content)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(name))!;
        Directory.CreateDirectory(folder);
        var beside = Path.Combine(folder, $".{Path.GetFileName(name)}.{Environment.ProcessId}");
        try
        {
            File.WriteAllBytes(beside, content);
            File.Move(beside, name, overwrite: true);
        }
        finally
        {
            File.Delete(beside);
        }
    }

    private static bool IsZip(string name)
    {
        using var file = File.OpenRead(name);
        return file.ReadByte() == 'P' && file.ReadByte() == 'K';
    }
}
