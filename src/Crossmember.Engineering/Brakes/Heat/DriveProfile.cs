using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>The road that brakes are driven over: recorded speed and height, or a grade and then stops. SI.</summary>
/// <param name="Grade">Rise over run of the grade.</param>
/// <param name="Count">Stops after the grade, on the level.</param>
/// <param name="Deceleration">Of those stops, m/s2.</param>
internal readonly record struct DriveProfile(
    Curve? Speeds, Curve? Heights, double Grade, double Length, double Speed, int Count, double From, double To, double Interval, double Deceleration)
{
    /// <summary>Standing afterward with hot brakes, s: fluid and linings are often hottest then.</summary>
    public const double Soak = 900;

    private const double Steepest = 0.6, Slowest = 0.1; // sine; m/s

    /// <summary>What is wrong with the figures, as a sentence; null where they can be driven.</summary>
    public string? Wrong()
    {
        if (Speeds is null && Heights is not null) return "Heights were recorded but no speed over the same way: record both, or neither.";
        if (Speeds is null) return RepeatedStops.Wrong(From, To, Deceleration, Interval);
        for (var i = 0; i < Speeds.Points.Count; i++)
            if (Speeds.Points[i].Y < 0 || (i > 0 && Speeds.Points[i].Y + Speeds.Points[i - 1].Y < Slowest))
                return "The recorded speed is negative, or nothing over a way between two points: look at the record.";
        for (var i = 1; i < (Heights?.Points.Count ?? 0); i++)
            if (Math.Abs(Heights!.Points[i].Y - Heights.Points[i - 1].Y) > Steepest * (Heights.Points[i].X - Heights.Points[i - 1].X))
                return "The recorded heights are steeper than any road: look at the record.";
        return null;
    }

    /// <summary>False where the run stops on the way.</summary>
    public bool Drive(HeatRun run, in Driven vehicle, List<HeatPoint>? log) =>
        (Speeds is null ? GradeThenStops(run, vehicle, log) : Recorded(run, vehicle, log)) && run.Drive(Stretch.Stand(Soak), log);

    /// <summary>The grade at its steady speed.</summary>
    public Stretch Down(in Driven vehicle) => vehicle.Lasting(Length / Speed, Speed, Speed, Math.Sin(Math.Atan(Grade)));

    private bool GradeThenStops(HeatRun run, in Driven vehicle, List<HeatPoint>? log)
    {
        if (!run.Drive(Down(vehicle), log)) return false;
        var slowing = (From - To) / Deceleration;
        // The gear holds nothing in a hard stop.
        Stretch stop = vehicle.Lasting(slowing, From, To, 0) with { Engine = 0 }, again = vehicle.Lasting(Interval - slowing, To, From, 0);
        for (var i = 0; i < Count; i++)
            if (!run.Drive(stop, log) || (i < Count - 1 && !run.Drive(again, log))) return false;
        return true;
    }

    private bool Recorded(HeatRun run, in Driven vehicle, List<HeatPoint>? log)
    {
        var h = 1;
        for (var i = 1; i < Speeds!.Points.Count; i++)
        {
            var (s0, v0) = Speeds.Points[i - 1];
            var (s1, v1) = Speeds.Points[i];
            for (var at = s0; at < s1;)
            {
                double sine = 0, to = s1;
                if (Heights is { } road)
                {
                    while (h < road.Points.Count && road.Points[h].X <= at) h++;
                    if (h < road.Points.Count && road.Points[h - 1].X <= at) (sine, to) = (Falling(road, h), Math.Min(s1, road.Points[h].X));
                    else if (h < road.Points.Count) to = Math.Min(s1, road.Points[h - 1].X);
                }
                if (!run.Drive(vehicle.Over(to - at, Between(at), Between(to), sine), log)) return false;
                at = to;
            }

            double Between(double s) => s == s0 ? v0 : s == s1 ? v1 : Math.Sqrt((v0 * v0) + (((v1 * v1) - (v0 * v0)) * (s - s0) / (s1 - s0)));
        }
        return true;
    }

    /// <summary>Sine of the slope that ends at a point, positive downhill.</summary>
    private static double Falling(Curve road, int h) => (road.Points[h - 1].Y - road.Points[h].Y) / (road.Points[h].X - road.Points[h - 1].X);
}
