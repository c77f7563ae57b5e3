namespace Crossmember.Storage.Rows;

/// <summary>A folded state at a position, kept to save folding again; of no value once the fold's version has moved on.</summary>
public sealed class SnapshotRow
{
    public required string Stream { get; init; }
    public required long Sequence { get; init; }
    public required int FoldVersion { get; init; }
    public required byte[] Content { get; init; }
}

/// <summary>A build in the list of builds.</summary>
public sealed class BuildRow
{
    public required string Id { get; init; }
    public required string Title { get; init; }
    public required long Entries { get; init; }
    public required string FirstRecorded { get; init; }
    public required string LastRecorded { get; init; }
}

/// <summary>What the lists show of a build, with where the streams stood when it was worked out; of no value once they have moved on.</summary>
public sealed class GlanceRow
{
    public required string Stream { get; init; }
    public required long Position { get; init; }
    public required long Shop { get; init; }

    /// <summary>The program that worked it out: another one may see more.</summary>
    public required string Maker { get; init; }
    public required string Content { get; init; }
}

/// <summary>The version in which a projection was last written.</summary>
public sealed class ProjectionRow
{
    public required string Name { get; init; }
    public required int Version { get; init; }
}
