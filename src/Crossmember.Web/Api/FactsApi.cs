using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features;

namespace Crossmember.Web.Api;

/// <summary>Facts come in as one array; the answer says for each what became of it.</summary>
public static class FactsApi
{
    private const int MostFacts = 10_000;

    /// <remarks>Online: 409 where somebody was faster, 400 with located faults where one cannot be kept; then nothing is written.
    /// From a queue: 200, each unit on its own, late ones are held.</remarks>
    public static async Task<IResult> Post(string id, string? arrival, HttpRequest request, ShopDesk desk)
    {
        if (!RequestBody.IsJson(request)) return RequestBody.WrongType("send application/json");
        if (arrival is not (null or "online" or "queue")) return Answers.Faults([new("", $"'{arrival}' is no way to arrive", "arrival=online or arrival=queue")]);
        var faults = new Faults();
        var facts = await Facts(id, request, faults);
        if (faults.Any) return Answers.Faults(faults.List);
        var outcomes = desk.Append(facts, arrival == "queue" ? Arrival.Queue : Arrival.Online);
        if (arrival == "queue") return Answers.Json(Answers.Of(outcomes));
        var refused = outcomes.Select((o, i) => (o, i)).Where(p => p.o is AppendOutcome.Refused).Select(p => Located(((AppendOutcome.Refused)p.o).Fault, facts[p.i], p.i)).ToList();
        if (refused.Count > 0) return Answers.Faults(refused);
        return Answers.Json(Answers.Of(outcomes), outcomes.Any(o => o is AppendOutcome.Conflict) ? StatusCodes.Status409Conflict : StatusCodes.Status200OK);
    }

    private static async Task<List<Fact>> Facts(string id, HttpRequest request, Faults faults)
    {
        if (await RequestBody.Read(request, JsonText.LargestBytes, faults) is not { } body || JsonText.Open(body, faults) is not { } document) return [];
        using (document)
        {
            if (document.RootElement.ValueKind != System.Text.Json.JsonValueKind.Array) faults.Add("", "the body is no list", "send an array of facts");
            else if (document.RootElement.GetArrayLength() > MostFacts) faults.Add("", "the list is too long", $"at most {MostFacts} facts in one call");
            if (faults.Any) return [];
            var facts = new List<Fact>();
            foreach (var (element, i) in document.RootElement.EnumerateArray().Select((e, i) => (e, i)))
                if (FactText.Read(element.Clone(), faults, $"/{i}") is { } fact)
                {
                    if (fact.Stream != id) faults.Add($"/{i}/stream", $"'{fact.Stream}' is another stream", $"'{id}', as in the address");
                    facts.Add(fact);
                }
            return facts;
        }
    }

    /// <summary>A rule names the subject; who sent the array wants the place in it.</summary>
    private static Fault Located(Fault fault, Fact fact, int index) => fault with
    {
        Path = !fault.Path.StartsWith(fact.Subject, StringComparison.Ordinal) ? $"/{index}"
            : fault.Path.Length == fact.Subject.Length ? $"/{index}/payload" : $"/{index}/payload{fault.Path[fact.Subject.Length..]}",
    };
}
