namespace Crossmember.Builds.Slots;

/// <summary>Where a vehicle stands on its way through the shop. The words are the contract: they stand in build files and in the journal.</summary>
public static class Phase
{
    /// <summary>In the order a vehicle passes through them; a comeback goes back from the last to an earlier one.</summary>
    public static IReadOnlyList<string> All { get; } = ["intake", "survey", "deciding", "engineering", "mock-up", "assembly", "proving", "delivered"];
}
