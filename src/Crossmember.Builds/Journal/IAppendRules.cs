using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>Rules across subjects (a base in use cannot be dropped, a choice names an option that exists), checked in the appending transaction.</summary>
public interface IAppendRules
{
    /// <summary>What would be wrong if these facts of one stream were appended now; each fault's path begins with the subject of the fact it is about.</summary>
    /// <param name="facts">In the order they would be appended; all are new and fit their subjects.</param>
    IReadOnlyList<Fault> Check(string stream, IReadOnlyList<Fact> facts, IJournalTransaction transaction);
}

/// <summary>For streams that need no rules beyond those of the journal.</summary>
public sealed class NoRules : IAppendRules
{
    public IReadOnlyList<Fault> Check(string stream, IReadOnlyList<Fact> facts, IJournalTransaction transaction) => [];
}
