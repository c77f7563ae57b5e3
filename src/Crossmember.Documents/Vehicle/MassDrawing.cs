using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Places;
using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Vehicle;

/// <summary>The vehicle from the side with its masses and its center of gravity, for paper.</summary>
public static class MassDrawing
{
    private const double Width = 170, Margin = 6; // mm on the page

    public static Drawing Of(Sheet sheet, string condition, MeasureSystem measure)
    {
        var size = VehicleSize.Of(sheet);
        var shape = new VehicleShape(size.Wheelbase.Meters, size.TireDiameter.Meters, size.Track.Meters, size.DatumHeight.Meters);
        var masses = PlacedMass.Of(sheet, LedgerLines.Of(sheet, condition)).Where(m => m is { At: not null, Kilograms: > 0, Standing: MassStanding.PutOn or MassStanding.Aboard }).ToList();
        double left = Math.Min(shape.Front, masses.Select(m => m.At!.Value.X).DefaultIfEmpty(0).Min()), right = Math.Max(shape.Rear, masses.Select(m => m.At!.Value.X).DefaultIfEmpty(0).Max());
        double top = Math.Max(shape.Roof, masses.Select(m => m.At!.Value.Z).DefaultIfEmpty(0).Max()) + 0.1, scale = (Width - (2 * Margin)) / (right - left);
        Spot At(double x, double z) => new(Margin + (scale * (x - left)), Margin + (scale * (top - z)));
        List<Shape> shapes = [.. Vehicle(shape, At, scale)];
        foreach (var m in masses.OrderByDescending(m => m.Kilograms))
        {
            var at = At(m.At!.Value.X, m.At.Value.Z);
            shapes.Add(new Shape.Circle(at, 0.28 * Math.Sqrt(m.Kilograms!.Value), m.Standing == MassStanding.Aboard ? Ink.OfCurve(1) : Ink.OfCurve(0)));
        }
        foreach (var m in masses.OrderByDescending(m => m.Kilograms).Take(8))
            shapes.Add(new Shape.Label(At(m.At!.Value.X, m.At.Value.Z), m.Ref.Item, 2.2, Ink.Text, Paper.Side.Middle));
        if (Number(sheet, $"mass.{condition}.center-x") is { } x && Number(sheet, $"mass.{condition}.center-z") is { } z) shapes.AddRange(Center(At(x, z)));
        return new(Width, (2 * Margin) + (scale * (top - shape.Ground)) + 4, $"The vehicle from the side with {masses.Count} masses, {condition}.", shapes);
    }

    private static IEnumerable<Shape> Vehicle(VehicleShape shape, Func<double, double, Spot> at, double scale)
    {
        double w = shape.Wheelbase, r = shape.TireDiameter / 2;
        yield return new Shape.Path([at(shape.Front, shape.Ground), at(shape.Rear, shape.Ground)], false, Ink.Quiet);
        yield return new Shape.Path([at(shape.Front, 0.02 * w), at(shape.Front, 0.27 * w), at(0.22 * w, 0.3 * w), at(0.31 * w, 0.54 * w), at(0.62 * w, 0.54 * w), at(0.66 * w, 0.3 * w), at(1.39 * w, 0.3 * w), at(1.39 * w, 0.02 * w)], false, Ink.Rule);
        yield return new Shape.Path([at(shape.Front, 0.0175 * w), at(shape.Rear, 0.0175 * w), at(shape.Rear, -0.0175 * w), at(shape.Front, -0.0175 * w)], true, Ink.Text);
        foreach (var x in new[] { 0, w }) yield return new Shape.Circle(at(x, shape.Ground + r), scale * r, Ink.Text);
    }

    /// <summary>The usual sign of a center of gravity on drawings: a disc with two opposite quarters filled.</summary>
    private static IEnumerable<Shape> Center(Spot c)
    {
        const double r = 2.4;
        yield return new Shape.Circle(c, r, Ink.Text, Ink.Ground);
        foreach (var from in new[] { 0, Math.PI })
            yield return new Shape.Path([c, .. Enumerable.Range(0, 9).Select(i => from + (i * Math.PI / 16)).Select(a => new Spot(c.X + (r * Math.Cos(a)), c.Y + (r * Math.Sin(a))))], true, null, Ink.Text);
    }

    private static double? Number(Sheet sheet, string key) => sheet.Key(key) is { Value.IsNumber: true } k ? k.Value.Number : null;
}
