using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Journal;

/// <summary>Invented facts about an invented build, each with an id that tells its number.</summary>
internal static class Facts
{
    public static readonly DateTimeOffset Morning = new(2026, 1, 31, 8, 5, 0, TimeSpan.Zero);

    public static Guid Id(int n) => new($"0190163d-8694-739b-aea5-{n:x12}");

    public static Fact Graded(int n, string slot = "tires", int? after = null, string grade = "C", int? batch = null) =>
        Of(n, EntryKind.SlotGraded, $"slots/{slot}/grade", new JsonObject { ["grade"] = grade }, after) with { Batch = batch is { } b ? Id(b) : null };

    public static Fact Defined(int n, string slot = "tires", int? after = null) =>
        Of(n, EntryKind.SlotDefined, $"slots/{slot}", new JsonObject { ["title"] = slot }, after);

    public static Fact Noted(int n, string slot = "tires", string text = "worn") => Of(n, EntryKind.NoteWritten, $"slots/{slot}/notes", new JsonObject { ["text"] = text }, null);

    public static Fact Corrected(Fact target, int n, JsonNode? payload, int? after = null) =>
        target with { Id = Id(n), Payload = payload, Corrects = target.Id, After = after is { } a ? Id(a) : null };

    public static Fact Of(int n, EntryKind kind, string subject, JsonNode? payload, int? after) =>
        new(Id(n), "b1", kind.Name, kind.Schema, Morning.AddMinutes(n), "ana", "bench", subject, after is { } a ? Id(a) : null, null, null, payload);
}

/// <summary>A clock that stands still unless told otherwise.</summary>
internal sealed class StandingClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 2, 1, 12, 0, 0, 123, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
