using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Files;

/// <summary>Opens a <c>crossmember.build/1</c> file of either form, bare JSON or zip, without changing anything anywhere.</summary>
public static class BuildFile
{
    public const string Format = "crossmember.build/1";

    /// <summary>Ids that no build may have.</summary>
    public static string IdOf(ObjectReader r)
    {
        var id = r.Text("id");
        if (id is Fact.Shop || !BuildRules.IsId(id)) r.Faults.Add(r.At("id"), $"'{id}' is no id of a build", "letters, digits, dots and dashes, and not 'shop'");
        return id;
    }

    /// <summary>Whether the format is the one this program reads; a newer one is named as such.</summary>
    public static bool IsFormat(ObjectReader r)
    {
        if (!r.IsObject) return false;
        var format = r.Text("format");
        if (format == Format) return true;
        var newer = format.StartsWith("crossmember.build/", StringComparison.Ordinal);
        r.Faults.Add(r.At("format"), newer ? $"'{format}' was written by a newer program" : $"'{format}' is no build file", $"this program reads {Format}");
        return false;
    }

    /// <summary>The journal form's entries, or the sheet form; null with faults.</summary>
    public static OpenedFile? Read(ReadOnlyMemory<byte> content, Catalogue catalogue, Faults faults)
    {
        var zip = content.Span.StartsWith("PK"u8);
        var package = zip ? BuildPackage.Open(content, faults) : new(content, new Dictionary<string, ReadOnlyMemory<byte>>());
        if (package is null || JsonText.Open(package.Json, faults) is not { } document) return null;
        // Half characters, keys that stand twice and numbers beyond a double have no canonical text: after this nobody meets them.
        if (CanonicalJson.Text(document.RootElement, faults) is null) return null;
        var r = new ObjectReader(document.RootElement, "", faults);
        if (!IsFormat(r) || !Elements.AreFewEnough(document.RootElement, faults)) return null;
        if (r.Has("journal")) return JournalForm.Read(r, catalogue.Table) is { } journal ? new(null, journal, package.Attachments) : null;
        return SheetForm.Read(r, catalogue.Table) is { } sheet ? new(sheet, null, package.Attachments) : null;
    }
}

/// <summary>What was in a file: one of the two forms, and attachments by content hash.</summary>
public sealed record OpenedFile(SheetImport? Sheet, JournalImport? Journal, IReadOnlyDictionary<string, ReadOnlyMemory<byte>> Attachments)
{
    public string Id => Sheet?.Id ?? Journal!.Id;

    public Slots.Build Build => Sheet?.Build ?? Journal!.Build;

    /// <summary>The currency of its shop, else of its prices; null where it has neither.</summary>
    public string? Currency => Shop.Books
        ?? Build.Slots.SelectMany(s => s.Options).SelectMany(o => o.Prices ?? []).Select(p => p.Each?.Currency).FirstOrDefault(c => c is not null);

    public Slots.ShopFacts Shop => Sheet?.Shop ?? Journal!.Shop;
}
