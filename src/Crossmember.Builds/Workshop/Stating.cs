using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Workshop;

/// <summary>Who says something, and on what.</summary>
public readonly record struct Speaker(string Person, string Device);

/// <summary>Makes the facts of stating: what vehicle it is, what items it has, what could be done about each, what was measured. Payloads are those of the build file.</summary>
public sealed class Stating(TimeProvider clock)
{
    /// <param name="sets">Members by set; null: the usual ones.</param>
    public Fact Open(string build, string title, JsonObject? sets, Speaker by, Guid? batch = null)
    {
        var payload = new JsonObject { ["title"] = title };
        if (sets is not null) payload["sets"] = sets;
        return Say(build, EntryKind.BuildOpened, "build", payload, null, by, batch);
    }

    /// <param name="seen">The last entry on the subject that the person was looking at.</param>
    public Fact Define(string build, string slot, string? parent, string title, double weight, Guid? seen, Speaker by, Guid? batch = null) =>
        Say(build, EntryKind.SlotDefined, $"slots/{slot}", new JsonObject { ["parent"] = parent, ["title"] = title, ["weight"] = weight }, seen, by, batch);

    /// <param name="body">As in a build file, without its id.</param>
    public Fact State(string build, string slot, string option, JsonObject body, Guid? seen, Speaker by, Guid? batch = null) =>
        Say(build, EntryKind.OptionStated, $"slots/{slot}/options/{option}", body, seen, by, batch);

    /// <summary>A value of the part that is there: it lies above what the option says of itself.</summary>
    /// <param name="key">A key or a pattern with stars.</param>
    /// <param name="value">As typed; null: nothing is known, and what the option says of itself does not count.</param>
    /// <param name="plusMinus">One standard uncertainty as typed; null where nobody said.</param>
    public Fact Note(string build, string slot, string option, string key, JsonNode? value, Basis basis, string? plusMinus, Guid? seen, Speaker by) =>
        Say(build, EntryKind.ValueNoted, $"slots/{slot}/options/{option}/values/{key}", Noted(value, basis, plusMinus), seen, by);

    /// <summary>The payload of a noted value.</summary>
    public static JsonObject Noted(JsonNode? value, Basis basis, string? plusMinus)
    {
        var payload = new JsonObject { ["value"] = value, ["basis"] = basis.ToString().ToLowerInvariant() };
        if (plusMinus is not null) payload["plusMinus"] = plusMinus;
        return payload;
    }

    public Fact Grade(string build, string slot, string? grade, IEnumerable<string> findings, Guid? seen, Speaker by) =>
        Say(build, EntryKind.SlotGraded, $"slots/{slot}/grade", new JsonObject { ["grade"] = grade, ["findings"] = new JsonArray([.. findings.Select(f => (JsonNode?)f)]) }, seen, by);

    /// <summary>Puts a build away or takes it out again.</summary>
    public Fact Archive(string build, bool archived, string why, Guid? seen, Speaker by) =>
        Say(build, EntryKind.BuildArchived, "archive", new JsonObject { ["archived"] = archived, ["why"] = why }, seen, by);

    /// <summary>Takes a fact back: it stays on record, and so does the taking back.</summary>
    public Fact Undo(Fact fact, Guid? seen, Speaker by, Guid? batch = null) =>
        new(FactIds.New(clock), fact.Stream, fact.Kind, fact.Schema, clock.GetUtcNow(), by.Person, by.Device, fact.Subject, seen, fact.Corrects ?? fact.Id, batch, null);

    /// <summary>What a fact should have said, by its speaker or by somebody else: it stands in the other's place from now on, and both stay on record.</summary>
    public Fact PutRight(Fact fact, JsonNode payload, Guid? seen, Speaker by, Guid? batch = null) => Undo(fact, seen, by, batch) with { Payload = payload };

    /// <summary>Any fact of a kind this program writes.</summary>
    public Fact Say(string stream, EntryKind kind, string subject, JsonNode payload, Guid? seen, Speaker by, Guid? batch = null) =>
        new(FactIds.New(clock), stream, kind.Name, kind.Schema, clock.GetUtcNow(), by.Person, by.Device, subject, seen, null, batch, payload);
}
