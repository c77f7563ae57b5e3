using System.Globalization;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>One value of the sheet, or one that is missing from it, in the words of the page.</summary>
/// <param name="Keys">More than one where several places say the same because one statement covers them.</param>
/// <param name="Title">What it means.</param>
/// <param name="Where">Which axle, side, gear, range or condition.</param>
/// <param name="Item">The item it is looked for at.</param>
/// <param name="Stated">What the item's option states of it; null where it states nothing.</param>
/// <param name="Origin">Where that statement stands; null with it.</param>
/// <param name="Waiting">How many checks say "don't know" because of it.</param>
public sealed record SheetLine(
    IReadOnlyList<string> Keys, string Title, string Where, ParameterPattern Pattern, Slot Item, KeyState State, Stated? Stated, StatedAt? Origin, int Waiting)
{
    public string Key => Keys[0];

    /// <summary>The key as it would be noted: the pattern it was stated under, else the key itself.</summary>
    public string Noting => Origin?.Pattern ?? (Keys.Count == 1 ? Key : Spanning(Keys));

    public bool IsMissing => State.Value.IsAbsent && State.Source != Source.Conflict;

    public bool IsAssumed => !State.Value.IsAbsent && State.Basis == Basis.Assumed;

    public bool IsMeasured => !State.Value.IsAbsent && State is { Basis: Basis.Measured, Source: not Source.Calculated };

    /// <summary>Nobody states such a value: it follows.</summary>
    public bool Follows => State.Source == Source.Calculated || Pattern.IsLedger;

    public string Value(MeasureSystem measure) => Shown.Value(State.Value, Pattern, State.Typed, measure);

    /// <summary>One standard uncertainty, or null where nobody said.</summary>
    public string? Sure(MeasureSystem measure) =>
        double.IsFinite(State.PlusMinus) && State.PlusMinus > 0 && Pattern.Dimension is { } dimension && !State.Value.IsAbsent ? $"± {Spread(State.PlusMinus, dimension, State.Source, measure)}" : null;

    /// <summary>The key with a star wherever the keys differ.</summary>
    private static string Spanning(IReadOnlyList<string> keys)
    {
        var words = keys.Select(k => k.Split('.')).ToList();
        return string.Join('.', words[0].Select((w, i) => words.TrueForAll(k => k[i] == w) ? w : "*"));
    }

    /// <summary>As it was stated; nobody is sure of one that was worked out to more than two figures.</summary>
    private static string Spread(double si, Dimension dimension, Source source, MeasureSystem measure)
    {
        if (source != Source.Calculated) return Display.Show(si, dimension, measure);
        var unit = Display.Customary(dimension, measure);
        var number = double.Parse((si / unit.Factor).ToString("G2", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return unit.Code == "1" ? Engineering.Quantities.Figures.Short(number) : $"{Engineering.Quantities.Figures.Short(number)} {Display.Symbol(unit)}";
    }
}

/// <summary>Where a statement stands in a build.</summary>
/// <param name="Option">The option whose words count: that in effect, or one it is like.</param>
/// <param name="Noted">Whether it was noted later, above the body of the option.</param>
public sealed record StatedAt(Slot Slot, string Option, string Pattern, bool Noted)
{
    /// <summary>The subject of the entry that says it.</summary>
    public string Subject => Noted ? $"slots/{Slot.Id}/options/{Option}/values/{Pattern}" : $"slots/{Slot.Id}/options/{Option}";

    /// <summary>Finds a statement by itself: statements are handed through, never copied.</summary>
    public static StatedAt? Find(Slot slot, Stated stated)
    {
        foreach (var noted in slot.Noted)
            if (ReferenceEquals(noted.Stated, stated)) return new(slot, noted.Option, noted.Pattern, true);
        foreach (var option in slot.Options)
            foreach (var (pattern, said) in option.Parameters)
                if (ReferenceEquals(said, stated)) return new(slot, option.Id, pattern, false);
        return null;
    }
}
