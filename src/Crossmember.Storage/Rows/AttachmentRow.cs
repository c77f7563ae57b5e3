namespace Crossmember.Storage.Rows;

/// <summary>What is known of an attached file; the file itself lies under its hash.</summary>
public sealed class AttachmentRow
{
    /// <summary>SHA-256 of the content, 64 lower-case hexadecimal digits.</summary>
    public required string Hash { get; init; }
    public required long Length { get; init; }
    public required string MediaType { get; init; }
    public required string Name { get; init; }
}
