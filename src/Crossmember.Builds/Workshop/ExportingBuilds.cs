using System.Text.Json.Nodes;
using Crossmember.Builds.Files;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Workshop;

/// <summary>Writes a build as a file that carries its whole journal: JSON, or zip where there are attachments.</summary>
public sealed class ExportingBuilds(BuildLibrary library, IAttachmentStore attachments)
{
    /// <summary>The file, or null with faults.</summary>
    public byte[]? Export(string id, Faults faults)
    {
        if (library.Open(id) is not { } open)
        {
            faults.Add("", $"there is no build '{id}'", "crossmember builds are listed by the web desk; ids are case-sensitive");
            return null;
        }
        var entries = library.Store.Read(id);
        var json = JournalForm.Write(id, open.Build.Title, entries, [.. library.Store.Read(Fact.Shop).Where(e => Named(open.Build, e.Fact.Subject))]);
        var files = AttachmentsOf(entries).Select(hash => (hash, Content(hash, faults))).ToList();
        if (faults.Any) return null;
        return files.Count == 0 ? json : BuildPackage.Write(json, files.Select(f => (f.hash, f.Item2!)));
    }

    /// <summary>What of the shop a build names: its currency and rounding, the trades it plans hours for, the tax on what it buys.</summary>
    private static bool Named(Build build, string subject)
    {
        var options = build.Slots.SelectMany(s => s.Options);
        var parts = subject.Split('/');
        return parts[0] switch
        {
            "shop" or "rounding" => options.Any(o => o.Prices is { Length: > 0 } || o.Hours is { Length: > 0 }),
            "trades" => options.Any(o => o.Hours is { } hours && hours.Any(h => h.Trade == parts[1])),
            "tax" => options.Any(o => o.Prices is { } prices && prices.Any(p => p.Category == parts[1])),
            _ => false,
        };
    }

    private IEnumerable<string> AttachmentsOf(IReadOnlyList<Entry> entries) =>
        entries.Select(e => (e.Fact.Payload as JsonObject)?[e.Fact.Kind == "document.revised" ? "hash" : "attachment"])
            .OfType<JsonValue>().Select(v => v.TryGetValue<string>(out var hash) ? hash : "").Where(h => h.Length == 64).Where(attachments.Has).Distinct().Order(StringComparer.Ordinal);

    private byte[]? Content(string hash, Faults faults)
    {
        using var stream = attachments.Open(hash, faults);
        if (stream is null) return null;
        var copy = new MemoryStream();
        stream.CopyTo(copy);
        return copy.ToArray();
    }
}
