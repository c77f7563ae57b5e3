namespace Crossmember.Documents.Vehicle;

/// <summary>The few lengths that the outline is drawn from, m. Everything else is our own proportion, the same for every vehicle.</summary>
/// <param name="DatumHeight">Frame datum plane over the ground.</param>
public sealed record VehicleShape(double Wheelbase, double TireDiameter, double Track, double DatumHeight)
{
    // Shares of the wheelbase: nothing here is measured on a vehicle.
    public double Front => -0.27 * Wheelbase;

    public double Rear => 1.42 * Wheelbase;

    public double Roof => 0.56 * Wheelbase;

    public double Ground => -DatumHeight;

    public double HalfWidth => (Track / 2) + (0.07 * Wheelbase);

    public double TireWidth => 0.3 * TireDiameter;

    public double RailApart => 0.36 * Track;
}

/// <summary>Where the vehicle lies in a picture: one scale for both views, side view above, plan below, the front at the left.</summary>
public sealed class PictureFrame
{
    private const double Margin = 26, Gap = 40;

    private readonly VehicleShape _shape;
    private readonly double _scale;

    public PictureFrame(VehicleShape shape, double width)
    {
        (_shape, Width) = (shape, width);
        _scale = (width - (2 * Margin)) / (shape.Rear - shape.Front);
        Side = new(0, 0, width, (2 * Margin) + (_scale * (shape.Roof - shape.Ground)));
        Plan = new(0, Side.Height + Gap, width, (2 * Margin) + (_scale * 2 * shape.HalfWidth));
    }

    public double Width { get; }

    public double Height => Plan.Top + Plan.Height;

    public Area Side { get; }

    public Area Plan { get; }

    /// <summary>Pixels of a length, m.</summary>
    public double Of(double meters) => meters * _scale;

    public double X(double x) => Margin + (_scale * (x - _shape.Front));

    /// <summary>Down the side view from a height over the datum.</summary>
    public double SideY(double z) => Side.Top + Margin + (_scale * (_shape.Roof - z));

    /// <summary>Down the plan from a place across: with the front at the left, the vehicle's right lies above.</summary>
    public double PlanY(double y) => Plan.Top + Margin + (_scale * (_shape.HalfWidth - y));
}

/// <summary>A part of the picture.</summary>
public readonly record struct Area(double Left, double Top, double Width, double Height);
