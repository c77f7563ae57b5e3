namespace Crossmember.Engineering.Reading;

/// <summary>One thing wrong in what somebody handed in: where, what, and what would be right. A closed list: see the kinds below.</summary>
/// <param name="Path">JSON pointer in a file, or the subject in a journal.</param>
public sealed record Fault(string Path, string Wrong, string Right)
{
    public override string ToString() => $"{(Path.Length == 0 ? "/" : Path)}: {Wrong}; {Right}";
}
