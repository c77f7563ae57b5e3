namespace Crossmember.Storage.Verification;

/// <summary>One thing that is not as it was written.</summary>
/// <param name="Where">A stream, <c>held</c>, <c>attachments</c> or <c>database</c>.</param>
/// <param name="Sequence">Place in the stream; null where the problem is not with one entry.</param>
/// <param name="Item">Column of the entry, or hash of the attachment.</param>
public sealed record Problem(string Where, long? Sequence, string Item, string What)
{
    public override string ToString() => $"{Where}{(Sequence is { } n ? $"/{n}" : "")} {Item}: {What}";
}
