using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>A place as somebody types it: three lengths. A bare number is in the reader's unit.</summary>
public sealed class PlaceDraft
{
    /// <summary>Axes in the order of the fields: to the rear, to the right, up.</summary>
    public const string Axes = "xyz";

    private readonly MeasureSystem _measure;
    private readonly Place? _from;
    private readonly string[] _shown;

    public PlaceDraft(Place? from, MeasureSystem measure)
    {
        (_from, _measure) = (from, measure);
        _shown = from is { } p ? [Text(p.X), Text(p.Y), Text(p.Z)] : ["", "", ""];
        Typed = [.. _shown];
    }

    public string[] Typed { get; }

    public bool IsChanged => !Typed.SequenceEqual(_shown);

    /// <summary>10 mm or half an inch, whichever the reader thinks in.</summary>
    public double Step => _measure == MeasureSystem.Metric ? 0.01 : 0.0127;

    /// <summary>The place, or null with a fault on each field (<c>x</c>, <c>y</c>, <c>z</c>) that cannot be read.</summary>
    public Place? Read(Faults? faults = null)
    {
        var read = new double?[3];
        for (var i = 0; i < 3; i++) read[i] = One(i, faults);
        return read is [{ } x, { } y, { } z] ? new(x, y, z) : null;
    }

    /// <summary>As the journal keeps it: each length with its unit.</summary>
    public string[] Said() => [.. Enumerable.Range(0, 3).Select(i => Typed[i] == _shown[i] && _from is { } p ? Exact(Of(p, i)) : WithUnit(Typed[i]))];

    /// <summary>One step, or several, along an axis; from zero where nothing is written yet.</summary>
    public void Nudge(char axis, int steps)
    {
        var i = Axes.IndexOf(axis, StringComparison.Ordinal);
        if (i >= 0) Typed[i] = Text((One(i, null) ?? 0) + (steps * Step));
    }

    /// <summary>To a place on a view: along and up from the side, along and across from above. What the view does not show stays, or is zero.</summary>
    public void Set(DrawnView view, double along, double other)
    {
        for (var i = 0; i < 3; i++)
            if (Typed[i].Trim().Length == 0) Typed[i] = Text(0);
        Typed[0] = Text(Snapped(along));
        Typed[view == DrawnView.Side ? 2 : 1] = Text(Snapped(other));
    }

    public void Reset() => _shown.CopyTo(Typed, 0);

    private static double Of(Place p, int axis) => axis switch { 0 => p.X, 1 => p.Y, _ => p.Z };

    private double Snapped(double meters) => Math.Round(meters / Step) * Step;

    private double? One(int i, Faults? faults)
    {
        // What nobody touched is as exact as it was stated.
        if (_from is { } p && Typed[i] == _shown[i]) return Of(p, i);
        var typed = WithUnit(Typed[i]);
        var read = ShopNotation.Read(typed, Dimension.Length);
        if (read.Value is { } length) return length.Si;
        faults?.Add(Axes[i].ToString(), read.Wrong!, read.WouldBeRight!);
        return null;
    }

    private string WithUnit(string typed)
    {
        var text = typed.Trim();
        return text.Length > 0 && text.All(c => char.IsAsciiDigit(c) || c is '.' or '-' or '+' or '/' or ' ' or '−') ? $"{text} {Display.Customary(Dimension.Length, _measure).Code}" : text;
    }

    private string Text(double meters)
    {
        var unit = Display.Customary(Dimension.Length, _measure);
        return $"{MassText.Number(unit.FromSi(meters), _measure == MeasureSystem.Metric ? 1 : 2)} {unit.Code}";
    }

    /// <summary>In the reader's own unit where that says it exactly, else to the hundredth of a millimeter.</summary>
    private string Exact(double meters) =>
        ShopNotation.Read(Text(meters), Dimension.Length).Value is { } told && Math.Abs(told.Si - meters) < 1e-9 ? Text(meters) : FormattableString.Invariant($"{meters * 1000:0.##} mm");
}
