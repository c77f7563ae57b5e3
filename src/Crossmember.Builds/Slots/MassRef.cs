namespace Crossmember.Builds.Slots;

/// <summary>Which mass item of a build is meant: one of an option's, or one that a loading condition puts on board.</summary>
/// <param name="Slot">Null for what is on board.</param>
/// <param name="Condition">Null for a part of an option.</param>
/// <param name="Item">Its name in the list that it stands in.</param>
public sealed record MassRef(string? Slot, string? Option, string? Condition, string Item)
{
    public static MassRef Of(string slot, string option, string item) => new(slot, option, null, item);

    public static MassRef Aboard(string condition, string item) => new(null, null, condition, item);

    /// <summary>What an entry has to be about to state it: <c>slots/winch/options/w9000</c>, <c>conditions/touring</c>.</summary>
    public string Subject => Condition is null ? $"slots/{Slot}/options/{Option}" : $"conditions/{Condition}";

    /// <summary>One text for it, such as <c>slots/winch/options/w9000/winch and rope</c>.</summary>
    public string Key => $"{Subject}/{Item}";

    public static MassRef? FromKey(string key) => key.Split('/', 5) switch
    {
        ["slots", var slot, "options", var option, var item] => Of(slot, option, item),
        ["conditions", var condition, .. var rest] when rest.Length > 0 => Aboard(condition, string.Join('/', rest)),
        _ => null,
    };
}
