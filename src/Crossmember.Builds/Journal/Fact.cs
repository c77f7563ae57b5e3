using System.Text.Json.Nodes;

namespace Crossmember.Builds.Journal;

/// <summary>One thing a person said in one sentence, made where it arose; never changed afterwards.</summary>
/// <param name="Id">UUIDv7 from a person, UUIDv8 from the sheet form of a build file.</param>
/// <param name="Stream"><c>shop</c> or the id of a build.</param>
/// <param name="Kind">Stable text name of the entry kind, such as <c>choice.made</c>; never the name of a class.</param>
/// <param name="Schema">Version of the payload's shape, from 1.</param>
/// <param name="Occurred">When it happened, UTC, to the millisecond.</param>
/// <param name="Subject">What it is about: a path such as <c>slots/tires/options/at33</c>.</param>
/// <param name="After">Id of the last entry the person had seen on the subject, above it or beneath it; null where there was none, or where order does not matter.</param>
/// <param name="Corrects">Id of the entry that this one corrects; a null payload voids it.</param>
/// <param name="Batch">Facts of one batch are appended together or not at all.</param>
/// <param name="Releases">Id of the held fact that this one brings into the stream after a person decided so; the held one itself stays outside.</param>
public sealed record Fact(
    Guid Id, string Stream, string Kind, int Schema, DateTimeOffset Occurred, string Person, string Device,
    string Subject, Guid? After, Guid? Corrects, Guid? Batch, JsonNode? Payload, Guid? Releases = null)
{
    /// <summary>The name of the shop's own stream; no build may have it as id.</summary>
    public const string Shop = "shop";
}
