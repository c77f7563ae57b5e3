namespace Crossmember.Documents.Paper.Pdf;

/// <summary>Lays strips onto pages.</summary>
internal sealed class Paginator(double height)
{
    private const double Slack = 0.01; // points, for sums of fractions

    private readonly List<List<Placed>> _pages = [new()];
    private double _y;

    public static IReadOnlyList<IReadOnlyList<Placed>> Pages(IReadOnlyList<Strip> strips, double height)
    {
        var pages = new Paginator(height);
        for (var i = 0; i < strips.Count;)
        {
            var end = i + 1;
            while (end < strips.Count && strips[end - 1].WithNext && !strips[end].NewPage) end++;
            pages.Chain([.. strips.Skip(i).Take(end - i)]);
            i = end;
        }
        return pages._pages;
    }

    /// <summary>Strips that want to be on one page; where no page can hold them they are parted where it ends.</summary>
    private void Chain(List<Strip> chain)
    {
        if (chain[0].NewPage || (_pages[^1].Count > 0 && !Holds(chain.Sum(s => s.Before + s.Height)) && chain.Exists(s => s.Height > 0))) Begin(chain[0]);
        foreach (var strip in chain)
        {
            if (strip.Height > 0 && !Holds(strip.Before + strip.Height) && _pages[^1].Exists(p => !ReferenceEquals(p.Strip, strip.Head))) Begin(strip);
            Put(strip);
        }
    }

    private bool Holds(double more) => _y + more <= height + Slack;

    private void Begin(Strip first)
    {
        if (_pages[^1].Count > 0) _pages.Add([]);
        _y = 0;
        if (first.Head is { } head) Put(head);
    }

    /// <summary>What is only a gap leaves no trace at the top of a page, nor beneath its end.</summary>
    private void Put(Strip strip)
    {
        if (_pages[^1].Count > 0) _y += strip.Before;
        if (strip.Height == 0) return;
        _pages[^1].Add(new(strip, _y));
        _y += strip.Height;
    }
}
