using Crossmember.Builds.Slots;
using Crossmember.Web.Features.Builds;

namespace Crossmember.Web.Features.Today;

/// <summary>What one vehicle asks of the shop on a day.</summary>
public sealed class VehicleDay(BoardRow row, DateOnly today)
{
    public BuildGlance Glance => row.Glance;

    public bool IsOld => row.IsOld;

    /// <summary>Entries of a device that was away, which met something newer.</summary>
    public int Held => row.Held;

    public bool IsDelivered => Glance.Phase == Phase.All[^1];

    /// <summary>Prices that no longer hold; a day that cannot be read counts as holding.</summary>
    public IReadOnlyList<GlancePrice> OutOfDate { get; } = [.. row.Glance.Prices.Where(p => PriceHeld.RanOut(p.Until, today))];

    /// <summary>Why the customer should be asked; null where there is nothing to ask.</summary>
    public string? AsksForYes => IsDelivered || Glance.Checks == 0 ? null
        : Glance.Consent is { By: not null, Differing: > 0 } changed ? $"{Words.Count(changed.Differing, "item differs", "items differ")} from what {Who(changed.By)} said yes to: ask again before the work."
        : Glance.Consent.By is null && Glance is { Fails: 0, Unknowns: 0, Undecided.Count: 0 } && Glance.Scenario != Option.AsFound ? "Everything is decided and nothing is in trouble: ask for the yes." : null;

    /// <summary>A delivered vehicle needs somebody only when something on it says no, or something came in.</summary>
    public bool NeedsSomebody => Glance.Stopped is not null || Held > 0 || Glance.Fails > 0
        || (!IsDelivered && (Glance.Unknowns > 0 || Glance.Undecided.Count > 0 || OutOfDate.Count > 0 || AsksForYes is not null));

    public string Address(string? item = null) =>
        $"builds/{Uri.EscapeDataString(Glance.Id)}/decisions?{(item is null ? "" : $"item={Uri.EscapeDataString(item)}&")}in={Uri.EscapeDataString(Glance.Scenario)}";

    /// <summary>Where the next step is done: at the item, else where values are noted, else where things are decided.</summary>
    public string NextAddress => Glance.Item is { } item ? Address(item) : Glance.FindOut.Count > 0 && !IsDelivered && Glance.Fails == 0 ? SheetAddress : Address();

    public string SheetAddress => $"builds/{Uri.EscapeDataString(Glance.Id)}/sheet?in={Uri.EscapeDataString(Glance.Scenario)}";

    private static string Who(string by) => by.Length > 0 ? by : "the customer";
}
