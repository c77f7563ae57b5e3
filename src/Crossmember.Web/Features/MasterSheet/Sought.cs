using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>Which values of the sheet somebody wants to see.</summary>
public enum Only { Everything, Missing, Assumed, Measured }

/// <summary>What somebody looks for on the sheet: words, and one kind of values.</summary>
public sealed record Sought(string Words, Only Only)
{
    public static Sought Nothing { get; } = new("", Only.Everything);

    public bool IsNothing => Words.Trim().Length == 0 && Only == Only.Everything;

    /// <summary>Whether a value is of the kind and has every word in its meaning, its key, or the names of its item.</summary>
    public bool Finds(SheetLine line) => IsOfKind(line) && Has($"{line.Title} {line.Where} {string.Join(' ', line.Keys)} {Named(line.Item)}");

    /// <summary>Whether an item itself is found: by its title, its id or the title of one of its options.</summary>
    public bool Finds(Slot item) => Only == Only.Everything && Words.Trim().Length > 0 && Has(Named(item));

    public bool IsOfKind(SheetLine line) => Only switch
    {
        Only.Missing => line.Waiting > 0,
        Only.Assumed => line.IsAssumed && !line.Follows,
        Only.Measured => line.IsMeasured,
        _ => true,
    };

    private static string Named(Slot item) => $"{item.Title} {item.Id} {string.Join(' ', item.Options.Select(o => o.Title))}";

    private bool Has(string text) => Words.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(w => text.Contains(w, StringComparison.OrdinalIgnoreCase));
}
