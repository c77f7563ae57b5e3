using Crossmember.Builds.Journal;

namespace Crossmember.Web.Features.Writing;

/// <summary>Tells facts as sentences, whatever they are about: what was put right or taken back, and what was said together.</summary>
public static class Telling
{
    /// <param name="plain">A fact that corrects nothing, as a sentence.</param>
    /// <param name="find">An earlier fact of the stream by its id.</param>
    public static string Say(Fact fact, Func<Fact, string> plain, Func<Guid, Fact?> find)
    {
        if (fact is not { Corrects: { } target }) return plain(fact);
        if (fact.Payload is not null) return $"put right: {plain(fact)}";
        return find(target) is { } taken ? $"took back: {plain(taken)}" : "took an entry back";
    }

    public static string Say(IReadOnlyList<Fact> facts, Func<Fact, string> plain, Func<Guid, Fact?> find) =>
        facts.Count == 1 ? Say(facts[0], plain, find) : $"{Say(facts[0], plain, find)}, and {Words.Count(facts.Count - 1, "thing", "things")} more with it";
}
