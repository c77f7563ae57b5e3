namespace Crossmember.Storage.Rows;

/// <summary>A held fact and, once there is one, the decision on it. Rows are never removed.</summary>
public sealed class HeldRow
{
    /// <summary>In the order they came.</summary>
    public long Place { get; init; }
    public required string FactId { get; init; }
    public required string Stream { get; init; }
    public string? Batch { get; init; }
    public required string Fact { get; init; }
    public required string Received { get; init; }
    public string? Met { get; init; }
    public required string Reason { get; init; }
    public string? DecidedBy { get; init; }
    public string? DecidedAt { get; init; }
    public string? ReleasedAs { get; init; }
    public string? Why { get; init; }
}
