namespace Crossmember.Engineering.Brakes.Chain;

/// <summary>Both axles and the valves before them: braking force over line pressure, in straight pieces.</summary>
/// <param name="Front">Force of the front axle over the pressure at its wheels.</param>
public readonly record struct Rig(AxleForce Front, AxleForce Rear, Valves Valves)
{
    /// <summary>With a rear circuit that has a share of the front's pressure, as from two cylinders on a bar: told over the front's.</summary>
    public Rig RearSeen(double share) => new(Front, Rear.Seen(share), Valves with { Knee = Valves.Knee / share });

    public double FrontAt(double line) => Front.At(Valves.Front(line));

    public double RearAt(double line) => Rear.At(Valves.Rear(line));

    public double TotalAt(double line) => FrontAt(line) + RearAt(line);

    /// <summary>Corners of the lines in rising order: where an axle begins, where a valve turns.</summary>
    /// <returns>How many were written.</returns>
    internal int Corners(Span<double> corners)
    {
        var n = 0;
        corners[n++] = 0;
        if (Valves.Metering > 0) (corners[n], corners[n + 1], n) = (Valves.Metering, 2 * Valves.Metering, n + 2);
        // A threshold beneath 2 m is reached on the steep piece, at m + p0/2; one above it on the level one.
        if (Front.Threshold > 0) corners[n++] = Front.Threshold < 2 * Valves.Metering ? Valves.Metering + (Front.Threshold / 2) : Front.Threshold;
        if (double.IsFinite(Valves.Knee)) corners[n++] = Valves.Knee;
        if (Rear.Threshold > 0 && Rear.Threshold <= Valves.Knee) corners[n++] = Rear.Threshold;
        else if (Rear.Threshold > 0 && Valves.Slope > 0) corners[n++] = Valves.Knee + ((Rear.Threshold - Valves.Knee) / Valves.Slope);
        corners[..n].Sort();
        return n;
    }

    /// <summary>Most corners that <see cref="Corners"/> writes.</summary>
    internal const int MostCorners = 7;

    /// <summary>Line pressure in Pa that brakes with a force in N; null where no pressure does, as with both axles dead.</summary>
    public double? Pressure(double force)
    {
        if (force <= 0) return 0;
        Span<double> corners = stackalloc double[MostCorners];
        var n = Corners(corners);
        for (var i = 0; i < n; i++)
        {
            double from = corners[i], to = i + 1 < n ? corners[i + 1] : double.PositiveInfinity, at = TotalAt(from);
            var reach = double.IsFinite(to) ? to - from : AxleForce.ReferencePressure;
            if (reach <= 0) continue;
            var slope = (TotalAt(from + reach) - at) / reach;
            if (slope > 0 && at + (slope * (to - from)) >= force) return from + ((force - at) / slope);
        }
        return null;
    }
}
