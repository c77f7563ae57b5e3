namespace Crossmember.Engineering.Reading;

/// <summary>The faults found so far in one reading.</summary>
public sealed class Faults
{
    /// <summary>More than this many help nobody; the rest are counted.</summary>
    public const int Shown = 200;

    private readonly List<Fault> _list = [];

    public IReadOnlyList<Fault> List => _list;

    public bool Any => Count > 0;

    /// <summary>All that were found, also those beyond what is shown.</summary>
    public int Count { get; private set; }

    public void Add(string path, string wrong, string right) => Add(new(path, wrong, right));

    public void Add(Fault fault)
    {
        Count++;
        if (_list.Count < Shown) _list.Add(fault);
    }
}
