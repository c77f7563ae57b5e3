namespace Crossmember.Engineering.Reading;

/// <summary>The faults found so far in one reading.</summary>
public sealed class Faults
{
    /// <summary>More than this many help nobody; the rest are counted.</summary>
    public const int Shown = 200;

    private readonly List<Fault> _list = [];

    public IReadOnlyList<Fault> List => _list;

    public bool Any => _list.Count > 0;

    public void Add(string path, string wrong, string right)
    {
        if (_list.Count < Shown) _list.Add(new(path, wrong, right));
    }

    public void Add(Fault fault)
    {
        if (_list.Count < Shown) _list.Add(fault);
    }
}
