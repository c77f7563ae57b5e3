namespace Crossmember.Builds.Drafting;

/// <summary>An option as a form holds it: everything as typed. Only the title is needed.</summary>
public sealed class OptionDraft
{
    public string Title { get; set; } = "";

    /// <summary>One of keep, refurbish, replace, upgrade, make, none.</summary>
    public string Class { get; set; } = "replace";

    /// <summary>The option of the same item it starts from; empty: none.</summary>
    public string Like { get; set; } = "";

    /// <summary>How much and how many in one field: "310 each, 5".</summary>
    public string Price { get; set; } = "";

    public string Category { get; set; } = "parts";

    /// <summary>What is there and does not fit the one field, in words; it stays unless something is typed. Null: nothing is.</summary>
    public string? PriceKept { get; set; }

    public List<HoursDraft> Hours { get; } = [];

    public string Lead { get; set; } = "";

    /// <summary>Of one and how many: "31 kg each, 4".</summary>
    public string Mass { get; set; } = "";

    public string MassBasis { get; set; } = "assumed";

    public string? MassKept { get; set; }

    /// <summary>Surely less than this, where nobody weighed it.</summary>
    public string MassBelow { get; set; } = "";

    /// <summary>Words of <see cref="Workshop.OriginalityWords"/>, or a share from 0 to 1; empty: assumed from the class.</summary>
    public string Originality { get; set; } = "";

    public List<ValueDraft> Values { get; } = [];
}

/// <summary>Hours of one trade.</summary>
public sealed class HoursDraft
{
    public string Trade { get; set; } = "";

    public string Figure { get; set; } = "";

    /// <summary>The name of a <see cref="Planning.Certainty"/>.</summary>
    public string Certainty { get; set; } = nameof(Planning.Certainty.Guess);

    /// <summary>Hours said in another way than by one figure, in words; they stay unless a figure is typed.</summary>
    public string? Kept { get; set; }

    /// <summary>Its place in the body it was read from; null: it is new.</summary>
    public int? Was { get; init; }
}

/// <summary>A value that the option brings.</summary>
public sealed class ValueDraft
{
    public string Key { get; set; } = "";

    public string Typed { get; set; } = "";

    public string Basis { get; set; } = "assumed";
}
