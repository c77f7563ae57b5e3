namespace Crossmember.Web.Features.Bench;

/// <summary>What a card has written into the address itself: it comes back later, when more may have been typed, and must not be taken for a new wish.</summary>
public sealed class AddressEcho
{
    private readonly List<string> _onTheWay = [];

    public void Write(string address) => _onTheWay.Add(address);

    /// <summary>Whether an address is one that was written here. Those before it will not come any more.</summary>
    public bool Is(string address)
    {
        var at = _onTheWay.IndexOf(address);
        _onTheWay.RemoveRange(0, at + 1);
        return at >= 0;
    }
}
