using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>Where attached files are kept, each under the SHA-256 of its content.</summary>
public interface IAttachmentStore
{
    bool Has(string hash);

    /// <summary>Keeps a file and answers its hash, or null with a fault.</summary>
    string? Keep(Stream content, string mediaType, string name, Faults faults);

    /// <summary>The content, checked against its hash; null with a fault where it is missing or damaged.</summary>
    Stream? Open(string hash, Faults faults);
}
