using System.IO.Compression;
using System.Security.Cryptography;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Files;

/// <summary>A zip of <c>build.json</c> and <c>attachments/HASH</c>. Nothing is unpacked to disk, and no size on the label is believed.</summary>
public sealed record BuildPackage(ReadOnlyMemory<byte> Json, IReadOnlyDictionary<string, ReadOnlyMemory<byte>> Attachments)
{
    private const int MostFiles = 100_000;
    private const long MostBytes = 2L * 1024 * 1024 * 1024, MostPerAttachment = 200L * 1024 * 1024;

    /// <summary>Photos and documents hardly shrink: what unpacks to more than this many times its size was made to fill a disk.</summary>
    private const long MostTimes = 100;

    private static readonly DateTimeOffset s_stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static BuildPackage? Open(ReadOnlyMemory<byte> content, Faults faults)
    {
        try
        {
            using var zip = new ZipArchive(new MemoryStream(content.ToArray(), false), ZipArchiveMode.Read);
            return Read(zip, content.Length, faults);
        }
        catch (InvalidDataException)
        {
            faults.Add("", "the zip is damaged or cut short", "export it again");
            return null;
        }
    }

    /// <summary>The same content gives the same bytes: names in order, one time stamp, one compression.</summary>
    public static byte[] Write(byte[] json, IEnumerable<(string Hash, byte[] Content)> attachments)
    {
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, true))
        {
            Add(zip, "build.json", json);
            foreach (var (hash, content) in attachments.OrderBy(a => a.Hash, StringComparer.Ordinal)) Add(zip, "attachments/" + hash, content);
        }
        return stream.ToArray();
    }

    private static void Add(ZipArchive zip, string name, byte[] content)
    {
        var entry = zip.CreateEntry(name, CompressionLevel.Optimal);
        entry.LastWriteTime = s_stamp;
        using var s = entry.Open();
        s.Write(content);
    }

    private static BuildPackage? Read(ZipArchive zip, long size, Faults faults)
    {
        if (zip.Entries.Count > MostFiles) faults.Add("", $"the zip holds {zip.Entries.Count} files", $"at most {MostFiles}");
        byte[]? json = null;
        var attachments = new Dictionary<string, ReadOnlyMemory<byte>>(StringComparer.Ordinal);
        var budget = Math.Min(MostBytes, JsonText.LargestBytes + (MostTimes * size));
        foreach (var entry in zip.Entries.Take(MostFiles))
        {
            if (entry.IsEncrypted) faults.Add("/" + ObjectReader.Escape(entry.FullName), "it is encrypted", "a zip without a password");
            else if (entry.FullName == "build.json" && json is null) json = Content(entry, JsonText.LargestBytes, ref budget, faults);
            else if (HashOf(entry.FullName) is not { } hash) faults.Add("/" + ObjectReader.Escape(entry.FullName), "a name that does not belong here", "build.json, and attachments/ named by their content hash");
            else if (Content(entry, MostPerAttachment, ref budget, faults) is not { } bytes) continue;
            else if (Convert.ToHexStringLower(SHA256.HashData(bytes)) != hash) faults.Add("/" + ObjectReader.Escape(entry.FullName), "the content does not match its name", "the SHA-256 of the content");
            else if (!attachments.TryAdd(hash, bytes)) faults.Add("/" + ObjectReader.Escape(entry.FullName), "it is in the zip twice", "keep one of the two");
        }
        if (json is null && !faults.Any) faults.Add("", "there is no build.json in the zip", "build.json at its root");
        return faults.Any ? null : new(json!, attachments);
    }

    private static string? HashOf(string name) =>
        name.StartsWith("attachments/", StringComparison.Ordinal) && name["attachments/".Length..] is { Length: 64 } hash && hash.All(char.IsAsciiHexDigitLower) ? hash : null;

    /// <summary>Unpacks at most what is allowed: a bomb's label may lie, so the bytes are counted as they come.</summary>
    private static byte[]? Content(ZipArchiveEntry entry, long most, ref long budget, Faults faults)
    {
        using var s = entry.Open();
        var bytes = new MemoryStream();
        var chunk = new byte[81920];
        for (int n; (n = s.Read(chunk)) > 0;)
        {
            budget -= n;
            if (bytes.Length + n > most || budget < 0)
            {
                faults.Add("/" + ObjectReader.Escape(entry.FullName), "it unpacks to more than is allowed", $"at most {most >> 20} MiB each, {MostBytes >> 20} MiB in all, and {MostTimes} times what it takes packed");
                return null;
            }
            bytes.Write(chunk, 0, n);
        }
        return bytes.ToArray();
    }
}
