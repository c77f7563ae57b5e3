using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Verification;

/// <summary>Compares the personal records that the builds name with those that lie here. Their content is no business of a check.</summary>
internal static class PersonalCheck
{
    public static IEnumerable<Problem> Check(SqliteConnection db, PersonalRecords personal)
    {
        var named = new HashSet<string>(StringComparer.Ordinal);
        foreach (var build in db.Streams().Where(s => s != Fact.Shop))
        {
            if (Standing(db, build) is not { } record || !named.Add(record)) continue;
            var faults = new Faults();
            if (!personal.Has(record)) yield return new("personal", null, record, $"the customer's record of '{build}' is missing: it stays with the shop that wrote it, and does not come with a build file");
            else if (personal.Read(record, faults) is null) yield return new("personal", null, record, $"{faults.List[0].Wrong} (named by '{build}')");
        }
        foreach (var orphan in personal.All().Where(r => !named.Contains(r)))
            yield return new("personal", null, orphan, "no build names this record: an erasing that was cut off, or a build that is gone; remove the file if nobody needs it");
    }

    /// <summary>The record that a build names, as its last word on the customer stands.</summary>
    private static string? Standing(SqliteConnection db, string build)
    {
        return Corrections.Effective(db.On(build, EntryKind.CustomerRecorded.Subject)) is [.., var last] && last.Fact.Kind == EntryKind.CustomerRecorded.Name && last.Payload["record"] is { } record && record.GetValueKind() == System.Text.Json.JsonValueKind.String ? record.GetValue<string>() : null;
    }
}
