using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Projections;

/// <summary>Titles as they stand, corrections applied.</summary>
internal static class Titles
{
    /// <summary>The title that stands on a subject for a kind; null where there is none, or where the last wording was voided.</summary>
    public static string? Standing(SqliteConnection db, string stream, string subject, string kind)
    {
        var standing = Corrections.Effective(db.On(stream, subject).Where(e => e.Fact.Kind == kind));
        return standing.Count > 0 && Lifts.Current.Lift(standing[^1]) is Lifted.Readable { Payload: JsonObject payload } ? Text(payload["title"]) : null;
    }

    private static string? Text(JsonNode? node) => node?.GetValueKind() == JsonValueKind.String ? node.GetValue<string>() : null;
}
