namespace Crossmember.Documents.Paper.Pdf;

/// <summary>A piece of a page over its whole width that nothing can part.</summary>
/// <param name="Draw">Given the height of its upper edge.</param>
internal sealed record Strip(double Height, Action<Pencil, double> Draw)
{
    /// <summary>Left free above it, except at the top of a page.</summary>
    public double Before { get; init; }

    /// <summary>Whether the next strip must stand on the same page.</summary>
    public bool WithNext { get; init; }

    /// <summary>What stands again above it where a page begins with it.</summary>
    public Strip? Head { get; init; }

    /// <summary>Whether it begins a page.</summary>
    public bool NewPage { get; init; }

    public static Strip Gap(double height) => new(0, (_, _) => { }) { Before = height };
}

/// <summary>A strip in its place on a page.</summary>
internal readonly record struct Placed(Strip Strip, double Y);
