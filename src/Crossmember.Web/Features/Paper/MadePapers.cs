using System.Security.Cryptography;
using Crossmember.Documents.Paper;

namespace Crossmember.Web.Features.Paper;

/// <summary>A document that waits to be fetched.</summary>
public sealed record MadePaper(string Id, string Name, PaperForm Form, byte[] Content);

/// <summary>The documents made last. They are not records: each can be made again at any time.</summary>
public sealed class MadePapers
{
    private const int Most = 12;

    private readonly LinkedList<MadePaper> _kept = [];
    private readonly Lock _lock = new();

    public MadePaper Keep(string name, PaperForm form, byte[] content)
    {
        var paper = new MadePaper(Convert.ToHexStringLower(SHA256.HashData(content)), name, form, content);
        lock (_lock)
        {
            _kept.AddFirst(paper);
            if (_kept.Count > Most) _kept.RemoveLast();
        }
        return paper;
    }

    public MadePaper? Find(string id)
    {
        lock (_lock) return _kept.FirstOrDefault(p => p.Id == id);
    }
}
