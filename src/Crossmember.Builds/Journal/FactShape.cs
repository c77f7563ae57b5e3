using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>What a fact must be like before the state of any stream is asked.</summary>
public static class FactShape
{
    /// <summary>The canonical text of a well-shaped fact, or null with faults.</summary>
    public static string? Text(Fact fact, Faults faults)
    {
        if (EntryKind.Find(fact.Kind) is not { } kind)
        {
            faults.Add(fact.Subject, $"'{fact.Kind}' is no kind of entry", $"nearest known kind: {Nearest.To(fact.Kind, EntryKind.All.Select(k => k.Name))}");
            return null;
        }
        var before = faults.Count;
        if (fact.Schema < 1 || fact.Schema > kind.Schema)
            faults.Add(fact.Subject, $"schema {fact.Schema} of '{kind.Name}' is not known here", $"write schema {kind.Schema}, or bring this program up to date");
        if (!Subject.Fits(fact.Subject, kind.Subject)) faults.Add(fact.Subject, $"not a subject of '{kind.Name}'", $"write {kind.Subject}");
        if (fact.Payload is null && fact.Corrects is null) faults.Add(fact.Subject, "an empty payload voids an entry, but none is named", "name the entry, or give the payload");
        if (fact.Id == Guid.Empty) faults.Add(fact.Subject, "the fact has no id", "give it a UUID");
        if (fact.Stream.Length == 0) faults.Add(fact.Subject, "the fact names no stream", $"write '{Fact.Shop}' or the id of a build");
        if (fact.Person.Length == 0) faults.Add(fact.Subject, "the fact names no person", "say who says it");
        return faults.Count > before ? null : FactText.Write(fact, faults);
    }
}
