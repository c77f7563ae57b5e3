using System.Buffers.Binary;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Storage.Tests.Importing;

/// <summary>Files spoilt by accident or on purpose. Nothing that comes from outside may bring the program down or leave half of itself behind.</summary>
public sealed class HostileFilesTests : IDisposable
{
    private static readonly JsonNode s_sheet = JsonNode.Parse(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "Importing", "every-key.json")))!;
    private static readonly Lazy<JsonNode> s_journal = new(() => JsonNode.Parse(JournalOf(s_sheet))!);
    private readonly Hosting _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Six_hundred_spoilt_sheets()
    {
        for (var seed = 0; seed < 600; seed++) _shop.Offer(new Mutations(new(seed)).OfJson(s_sheet), $"sheet, seed {seed}");
        AssertSomeOfEach();
    }

    [Fact]
    public void A_hundred_spoilt_journals()
    {
        for (var seed = 1000; seed < 1100; seed++) _shop.Offer(new Mutations(new(seed)).OfJson(s_journal.Value), $"journal, seed {seed}");
        Assert.True(_shop.Refused > 50);
    }

    /// <summary>Whoever forges a journal can forge its hashes as well.</summary>
    [Fact]
    public void Two_hundred_journals_with_spoilt_facts_and_right_hashes()
    {
        for (var seed = 2000; seed < 2200; seed++)
        {
            var file = s_journal.Value.DeepClone();
            var chance = new Random(seed);
            var entries = file["journal"]!.AsArray();
            for (var n = chance.Next(1, 3); n > 0; n--) new Mutations(chance).Tree(entries[chance.Next(entries.Count)]!["fact"] ?? entries[0]!);
            if (chance.Next(5) == 0) entries.Add(entries[chance.Next(entries.Count)]!.DeepClone());
            _shop.Offer(Encoding.UTF8.GetBytes(Chained(file).ToJsonString()), $"forged journal, seed {seed}");
        }
        AssertSomeOfEach();
    }

    [Fact]
    public void A_hundred_spoilt_packages()
    {
        var whole = Zip(("build.json", Bytes(s_sheet)), (Named("a photo"u8), "a photo"u8.ToArray()));
        _shop.Offer(whole, "whole package");
        Assert.Equal(1, _shop.Accepted);
        for (var seed = 3000; seed < 3090; seed++) _shop.Offer(new Mutations(new(seed)).OfBytes(whole), $"package, seed {seed}");
        for (var seed = 3090; seed < 3100; seed++) _shop.Offer(Zip(("build.json", new Mutations(new(seed)).OfJson(s_sheet))), $"packed sheet, seed {seed}");
        Assert.True(_shop.Refused > 50);
    }

    [Fact]
    public void A_package_with_names_that_lead_out_or_contents_that_do_not_match_is_refused()
    {
        var build = ("build.json", Bytes(s_sheet));
        (string, byte[])[][] packages =
        [
            [build, ("../evil.json", [1])], [build, ("/etc/passwd", [1])], [build, ("attachments/../../x", [1])], [build, ("C:\\x", [1])], [("sub/build.json", Bytes(s_sheet))], [],
            [build, build], [build, (Named([1, 2]), [1, 2]), (Named([1, 2]), [1, 2])], [build, (Named([1, 2]), [1, 3])], [build, ("attachments/" + new string('A', 64), [1])], [build, ("attachments/", [])],
        ];
        foreach (var package in packages) _shop.Offer(Zip(package), string.Join(", ", package.Select(p => p.Item1)));
        Assert.Equal((packages.Length, 0), (_shop.Refused, _shop.Accepted));
    }

    [Fact]
    public void A_package_that_unpacks_without_end_is_refused_whatever_its_label_says()
    {
        var bomb = Zip(("build.json", new byte[JsonText.LargestBytes + 1]));
        _shop.Offer(bomb, "more than 64 MiB of zeros");
        // The size on the label, in the local header and in the directory (APPNOTE.TXT 6.3.10, 4.3.7 and 4.3.12: offsets 22 and 24).
        var lying = bomb.ToArray();
        BinaryPrimitives.WriteUInt32LittleEndian(lying.AsSpan(22), 100);
        BinaryPrimitives.WriteUInt32LittleEndian(lying.AsSpan(Directory(lying) + 24), 100);
        _shop.Offer(lying, "a small size on the label");
        var photo = new byte[90 << 20];
        _shop.Offer(Zip(("build.json", Bytes(s_sheet)), (Named(photo), photo)), "a photo of zeros");
        var declared = Zip(("build.json", Bytes(s_sheet)));
        BinaryPrimitives.WriteUInt32LittleEndian(declared.AsSpan(Directory(declared) + 24), uint.MaxValue - 1);
        _shop.Offer(declared, "a huge size on the label");
        Assert.Equal(0, _shop.Accepted - (_shop.Refused == 4 ? 0 : 1));
    }

    /// <summary>Bit 0 of the flags says that the content is encrypted (APPNOTE.TXT 6.3.10, 4.4.4).</summary>
    [Fact]
    public void An_encrypted_package_is_refused()
    {
        var zip = Zip(("build.json", Bytes(s_sheet)));
        zip[6] |= 1;
        zip[Directory(zip) + 8] |= 1;
        _shop.Offer(zip, "encrypted");
        Assert.Equal(1, _shop.Refused);
    }

    [Fact]
    public void Hundreds_of_faults_are_as_well_told_as_one()
    {
        var file = s_journal.Value.DeepClone();
        for (var i = 0; i < 500; i++) file["journal"]!.AsArray().Add(new JsonObject { ["sequence"] = "x", ["fact"] = null });
        _shop.Offer(Bytes(file), "500 broken entries");
        var chain = s_sheet.DeepClone();
        for (var i = 0; i < 500; i++) chain["scenarios"]!.AsArray().Add(new JsonObject { ["id"] = $"s{i}", ["base"] = i == 0 ? null : $"s{i - 1}" });
        _shop.Offer(Bytes(chain), "500 bases in a row");
        var many = s_sheet.DeepClone();
        for (var i = 0; i < 100_001; i++) many["scenarios"]!.AsArray().Add(new JsonObject { ["id"] = $"s{i}" });
        _shop.Offer(Bytes(many), "more elements than a file may have");
        Assert.Equal(3, _shop.Refused);
    }

    [Fact]
    public void A_file_whose_shop_cannot_be_kept_leaves_nothing_of_its_build()
    {
        var file = s_journal.Value.DeepClone();
        // The shop's fact has the id of an entry of the build: it can only be found out while writing.
        file["shop"]!.AsArray()[0]!["id"] = (string)file["journal"]![0]!["fact"]!["id"]!;
        _shop.Offer(Bytes(file), "an id twice");
        Assert.Equal(1, _shop.RefusedByTheStore);
    }

    private void AssertSomeOfEach() =>
        Assert.True(_shop is { Accepted: > 10, Refused: > 50 }, $"{_shop.Accepted} accepted, {_shop.Refused} refused, {_shop.RefusedByTheStore} by the store: this explores little");

    private static byte[] JournalOf(JsonNode sheet)
    {
        using var folder = new Shop();
        var faults = new Faults();
        using var shop = OpenShop.Open(folder.Folder, TimeProvider.System);
        var imported = shop.Importing().Import(BuildFile.Read(Bytes(sheet), Catalogue.Shipped, faults)!, null, faults)!;
        var zip = shop.Exporting.Export(imported.Id, faults)!;
        using var archive = new ZipArchive(new MemoryStream(zip));
        using var json = archive.GetEntry("build.json")!.Open();
        var copy = new MemoryStream();
        json.CopyTo(copy);
        return copy.ToArray();
    }

    /// <summary>Puts sequences and hashes right again, as docs/formats/journal.md says.</summary>
    private static JsonNode Chained(JsonNode file)
    {
        var previous = new byte[32];
        var sequence = 0L;
        foreach (var entry in file["journal"]!.AsArray().OfType<JsonObject>())
        {
            entry["sequence"] = ++sequence;
            entry["previous"] = Convert.ToHexStringLower(previous);
            var number = new byte[8];
            BinaryPrimitives.WriteInt64BigEndian(number, sequence);
            previous = SHA256.HashData([.. previous, .. number, .. Encoding.ASCII.GetBytes((string?)entry["recorded"] ?? ""), .. Encoding.UTF8.GetBytes(CanonicalJson.Text(entry["fact"], new()) ?? "")]);
            entry["hash"] = Convert.ToHexStringLower(previous);
        }
        return file;
    }

    private static byte[] Bytes(JsonNode node) => Encoding.UTF8.GetBytes(node.ToJsonString());

    private static string Named(ReadOnlySpan<byte> content) => "attachments/" + Convert.ToHexStringLower(SHA256.HashData(content));

    private static byte[] Zip(params (string Name, byte[] Content)[] files)
    {
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, true))
            foreach (var (name, content) in files)
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(content);
            }
        return stream.ToArray();
    }

    /// <summary>Where the central directory begins: its signature is PK 01 02.</summary>
    private static int Directory(byte[] zip) => zip.AsSpan().LastIndexOf("PK\u0001\u0002"u8);
}
