using System.Text;
using Crossmember.Engineering.Reading;

namespace Crossmember.Storage;

/// <summary>
/// What a person may ask to have erased, kept outside the journal, because nothing can be taken out of that: one file for each record, named by a random id.
/// A change leaves no older wording behind, and erasing leaves nothing.
/// </summary>
/// <remarks>Overwriting reaches the file as the system shows it; copies that a file system, a drive or a backup has made for itself it cannot reach.</remarks>
public sealed class PersonalRecords(string folder)
{
    private const string Incoming = ".new";
    private const long LargestBytes = 1 << 20;

    private readonly Lock _one = new();

    /// <summary>A random id (UUID version 4): one made from a name would still tell the name.</summary>
    public static string NewId() => Guid.NewGuid().ToString("D");

    public string PathOf(string record) => Path.Combine(folder, record);

    public bool Has(string record) => IsId(record) && (File.Exists(PathOf(record)) || File.Exists(PathOf(record) + Incoming));

    /// <summary>The ids of all records that lie here.</summary>
    public IReadOnlyList<string> All() => !Directory.Exists(folder) ? []
        : [.. Directory.EnumerateFiles(folder).Select(f => Path.GetFileName(f)!).Select(f => f.EndsWith(Incoming, StringComparison.Ordinal) ? f[..^Incoming.Length] : f).Distinct().Order(StringComparer.Ordinal)];

    /// <summary>The card, or null with a fault where there is none or it cannot be read.</summary>
    public CustomerCard? Read(string record, Faults faults)
    {
        if (!Has(record))
        {
            faults.Add(record, "the customer's record is not here", "records stay with the shop that wrote them: write it down anew, or restore it from a backup");
            return null;
        }
        lock (_one) return Trying(record, faults, () => Whole(record, faults));
    }

    /// <summary>Writes a record whole and forces it to the disk, in the place of what was there; false with a fault where that failed.</summary>
    public bool Keep(string record, CustomerCard card, Faults faults)
    {
        foreach (var fault in card.Check().List) faults.Add(fault);
        if (!IsId(record)) faults.Add(record, "this is no id of a record", "a random UUID");
        if (faults.Any) return false;
        lock (_one)
            return Trying(record, faults, () =>
            {
                MakeFolder();
                var path = PathOf(record);
                Write(path + Incoming, Encoding.UTF8.GetBytes(card.Write()));
                // From here on the new wording is whole on the disk: a cut in between is made good when it is next read.
                Blot(path);
                File.Move(path + Incoming, path, overwrite: true);
                return true;
            });
    }

    /// <summary>Overwrites the content and removes the file; false with a fault where that failed. Erasing what is not here is no fault.</summary>
    public bool Erase(string record, Faults faults)
    {
        if (!IsId(record)) return true;
        lock (_one)
            return Trying(record, faults, () =>
            {
                foreach (var path in new[] { PathOf(record), PathOf(record) + Incoming })
                {
                    Blot(path);
                    File.Delete(path);
                }
                return true;
            });
    }

    private static bool IsId(string record) => Guid.TryParseExact(record, "D", out _);

    private CustomerCard? Whole(string record, Faults faults)
    {
        var path = PathOf(record);
        if (File.Exists(path + Incoming))
        {
            // A change was cut off: what is whole of it stands, what is not never was.
            if (Bytes(path + Incoming) is { } fresh && CustomerCard.Read(fresh, new()) is { } card)
            {
                Blot(path);
                File.Move(path + Incoming, path, overwrite: true);
                return card;
            }
            Blot(path + Incoming);
            File.Delete(path + Incoming);
        }
        var inner = new Faults();
        if (File.Exists(path) && Bytes(path) is { } content && CustomerCard.Read(content, inner) is { } read) return read;
        faults.Add(record, $"the customer's record cannot be read{(inner.Any ? $": {inner.List[0].Wrong}" : "")}", "restore it from a backup, or write it down anew");
        return null;
    }

    private static byte[]? Bytes(string path) => new FileInfo(path).Length > LargestBytes ? null : File.ReadAllBytes(path);

    private void MakeFolder()
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            // It may have been made by a copy or a restore that knew nothing of whose it is.
            File.SetUnixFileMode(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private static void Write(string path, byte[] content)
    {
        var options = new FileStreamOptions { Mode = FileMode.Create, Access = FileAccess.Write, Share = FileShare.None };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        using var file = new FileStream(path, options);
        file.Write(content);
        file.Flush(flushToDisk: true);
    }

    /// <summary>Writes zeros over the content where it lies, before the file is let go.</summary>
    private static void Blot(string path)
    {
        if (!File.Exists(path)) return;
        // Somebody who reads it just now, such as a check, does not stop an erasing.
        using var file = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite | FileShare.Delete);
        file.Write(new byte[file.Length]);
        file.Flush(flushToDisk: true);
    }

    private T? Trying<T>(string record, Faults faults, Func<T> work)
    {
        try
        {
            return work();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(record, $"the customer's record could not be reached: {e.Message}", $"look at the rights and the space of {folder}");
            return default;
        }
    }
}
