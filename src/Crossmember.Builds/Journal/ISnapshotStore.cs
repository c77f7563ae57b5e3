namespace Crossmember.Builds.Journal;

/// <summary>Where snapshots are kept: a memory that may be lost at any time.</summary>
public interface ISnapshotStore
{
    /// <summary>The newest one not after a position, made by the same version of the fold; null where there is none.</summary>
    (long Sequence, byte[] Content)? Latest(string stream, long upTo, int foldVersion);

    void Keep(string stream, long sequence, int foldVersion, byte[] content);
}
