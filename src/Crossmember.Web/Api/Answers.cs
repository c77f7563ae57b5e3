using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Api;

/// <summary>The shapes of what the programs' door answers.</summary>
public static class Answers
{
    public static IResult Json(JsonNode body, int status = StatusCodes.Status200OK) => Results.Text(body.ToJsonString(), "application/json", statusCode: status);

    /// <param name="file">The name of what was handed in, where it had one.</param>
    public static IResult Faults(IEnumerable<Fault> faults, string file = "", int status = StatusCodes.Status400BadRequest) => Json(new JsonObject
    {
        ["format"] = "crossmember.faults/1",
        ["faults"] = new JsonArray([.. faults.Select(f => new JsonObject { ["file"] = file, ["path"] = f.Path, ["wrong"] = f.Wrong, ["right"] = f.Right })]),
    }, status);

    public static IResult NoBuild(string id) =>
        Faults([new("", $"there is no build '{id}'", "GET /api/builds lists them; ids are case-sensitive")], status: StatusCodes.Status404NotFound);

    public static IResult NotThere(string path, string wrong, string right) => Faults([new(path, wrong, right)], status: StatusCodes.Status404NotFound);

    public static JsonObject Of(IReadOnlyList<AppendOutcome> outcomes) => new()
    {
        ["format"] = "crossmember.outcomes/1",
        ["outcomes"] = new JsonArray([.. outcomes.Select(Of)]),
    };

    private static JsonObject Of(AppendOutcome outcome)
    {
        var told = new JsonObject { ["id"] = FactText.Id(outcome.FactId) };
        switch (outcome)
        {
            case AppendOutcome.Appended a: Tell(told, "appended", ("sequence", a.Sequence)); break;
            case AppendOutcome.Acknowledged a: Tell(told, "acknowledged", ("sequence", a.Sequence)); break;
            case AppendOutcome.Conflict c: Tell(told, "conflict", ("subject", c.Subject), ("seen", IdOf(c.Seen)), ("last", LastOf(c.Last))); break;
            case AppendOutcome.Held h: Tell(told, "held", ("reason", h.Reason)); break;
            case AppendOutcome.Decided d: Tell(told, "decided", ("person", d.Decision.Person), ("releasedAs", IdOf(d.Decision.ReleasedAs)), ("why", d.Decision.Why)); break;
            case AppendOutcome.Refused r: Tell(told, "refused", ("path", r.Fault.Path), ("wrong", r.Fault.Wrong), ("right", r.Fault.Right)); break;
            case AppendOutcome.LeftOut l: Tell(told, "left-out", ("because", FactText.Id(l.Because))); break;
        }
        return told;
    }

    private static void Tell(JsonObject told, string outcome, params (string Name, JsonNode? Value)[] more)
    {
        told["outcome"] = outcome;
        foreach (var (name, value) in more) told[name] = value;
    }

    private static JsonValue? IdOf(Guid? id) => id is { } known ? JsonValue.Create(FactText.Id(known)) : null;

    private static JsonNode? LastOf(Entry? last) => last is null ? null : JsonNode.Parse(last.FactText);
}
