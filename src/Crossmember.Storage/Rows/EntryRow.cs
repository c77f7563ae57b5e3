namespace Crossmember.Storage.Rows;

/// <summary>An entry as kept. The fact's text is the truth; the columns beside it only help to find it, and verification compares them.</summary>
public sealed class EntryRow
{
    public required string Stream { get; init; }
    public required long Sequence { get; init; }
    public required string FactId { get; init; }
    public required string Kind { get; init; }
    public required string Subject { get; init; }
    public required string Fact { get; init; }
    public required string Recorded { get; init; }
    public required byte[] Previous { get; init; }
    public required byte[] Hash { get; init; }
}

/// <summary>Where a stream stands, written with each append: a missing last entry shows.</summary>
public sealed class HeadRow
{
    public required string Stream { get; init; }
    public required long Sequence { get; init; }
    public required byte[] Hash { get; init; }
}
