namespace Crossmember.Builds.Pasting;

/// <summary>Where a pasted part goes. A closed list: all of it is on this screen.</summary>
public abstract record Destination
{
    private Destination() { }

    /// <summary>An option of an item that is there.</summary>
    public sealed record Item(string Slot) : Destination;

    /// <summary>An item of its own, under the vehicle.</summary>
    public sealed record NewItem : Destination;

    /// <summary>A line of the shop's price list, to be copied into options later.</summary>
    public sealed record PriceList : Destination;

    /// <summary>It stays in the list.</summary>
    public sealed record Nowhere : Destination;
}
