using System.Security.Cryptography;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Storage.Rows;
using Microsoft.EntityFrameworkCore;

namespace Crossmember.Storage;

/// <summary>Attached files, each under the hash of its content: <c>attachments/ab/abcd...</c>. The same content is kept once.</summary>
public sealed class Attachments(string folder, ShopDatabase database) : IAttachmentStore
{
    /// <summary>A larger file is refused: it would fill a tablet, and nothing in a shop's record needs it.</summary>
    public const long LargestBytes = 200L * 1024 * 1024;

    /// <summary>Where the file with a hash lies.</summary>
    public string PathOf(string hash) => Path.Combine(folder, hash[..2], hash);

    /// <summary>Keeps a file and answers its entry in the index, or null with a fault.</summary>
    /// <remarks>Written beside, forced to disk, then renamed: a file under its hash is always whole.</remarks>
    public AttachmentRow? Add(Stream content, string mediaType, string name, Faults faults)
    {
        Directory.CreateDirectory(folder);
        var incoming = Path.Combine(folder, $"incoming-{Guid.NewGuid():N}");
        try
        {
            if (Receive(content, incoming) is not var (hash, length))
            {
                faults.Add(name, $"the file is larger than {LargestBytes >> 20} MiB", "attach a smaller one");
                return null;
            }
            var path = PathOf(hash);
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.Move(incoming, path, overwrite: true);
            return Index(new() { Hash = hash, Length = length, MediaType = mediaType, Name = name });
        }
        finally
        {
            File.Delete(incoming);
        }
    }

    public bool Has(string hash) => Find(hash) is not null && File.Exists(PathOf(hash));

    public string? Keep(Stream content, string mediaType, string name, Faults faults) => Add(content, mediaType, name, faults)?.Hash;

    /// <summary>The index entry of a file, null where there is none.</summary>
    public AttachmentRow? Find(string hash)
    {
        using var db = database.Context();
        return db.Attachments.AsNoTracking().SingleOrDefault(a => a.Hash == hash);
    }

    /// <summary>The content, checked against its hash before the first byte is given out; null with a fault where it is missing or damaged.</summary>
    public Stream? Open(string hash, Faults faults)
    {
        if (Find(hash) is not { } row || !File.Exists(PathOf(hash)))
        {
            faults.Add(hash, "no attachment has this hash", "restore it from a backup");
            return null;
        }
        var file = File.OpenRead(PathOf(hash));
        if (file.Length == row.Length && Hash(file) == hash)
        {
            file.Position = 0;
            return file;
        }
        file.Dispose();
        faults.Add(hash, $"the attachment '{row.Name}' is damaged: its content no longer has this hash", "restore it from a backup");
        return null;
    }

    internal static string Hash(Stream content) => Convert.ToHexStringLower(SHA256.HashData(content));

    private static (string Hash, long Length)? Receive(Stream content, string path)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        using var file = File.Create(path);
        var buffer = new byte[81920];
        var length = 0L;
        for (int read; (read = content.Read(buffer)) > 0;)
        {
            if ((length += read) > LargestBytes) return null;
            hash.AppendData(buffer, 0, read);
            file.Write(buffer, 0, read);
        }
        file.Flush(flushToDisk: true);
        return (Convert.ToHexStringLower(hash.GetHashAndReset()), length);
    }

    private AttachmentRow Index(AttachmentRow row)
    {
        using var db = database.Open();
        // Under another name the same content is the same attachment; the first name stays.
        db.Run("INSERT INTO Attachments (Hash, Length, MediaType, Name) VALUES ($hash, $length, $type, $name) ON CONFLICT (Hash) DO NOTHING",
            ("$hash", row.Hash), ("$length", row.Length), ("$type", row.MediaType), ("$name", row.Name));
        return Find(row.Hash)!;
    }
}
