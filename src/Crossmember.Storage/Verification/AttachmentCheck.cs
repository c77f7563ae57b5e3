using Crossmember.Storage.Rows;

namespace Crossmember.Storage.Verification;

/// <summary>Reads every attachment in the index and compares length and hash.</summary>
internal static class AttachmentCheck
{
    public static IEnumerable<Problem> Check(IEnumerable<AttachmentRow> index, Attachments attachments) =>
        index.Select(row => Wrong(row, attachments.PathOf(row.Hash)) is { } wrong ? new Problem("attachments", null, row.Hash, wrong) : null).OfType<Problem>();

    private static string? Wrong(AttachmentRow row, string path)
    {
        if (!File.Exists(path)) return $"the file of '{row.Name}' is missing";
        using var file = File.OpenRead(path);
        if (file.Length != row.Length) return $"'{row.Name}' has {file.Length} bytes, {row.Length} were kept";
        return Attachments.Hash(file) == row.Hash ? null : $"'{row.Name}' no longer has its hash";
    }
}
