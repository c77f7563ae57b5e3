namespace Crossmember.Engineering.Springs;

/// <summary>Where a wheel comes to rest between its stops.</summary>
internal enum Rest { Free, OnStop, OnUnknownStop, Solid, AtDroop }

/// <summary>One wheel's spring with a helper and a bump stop that touch later: a line of straight pieces, walked piece by piece. SI.</summary>
/// <remarks>Compression is counted from the state in which the height was taped; docs/derivations/springs.md.</remarks>
/// <param name="Rate">Spring alone.</param>
/// <param name="Helper">Rate of the helper, 0 without one.</param>
/// <param name="HelperAt">Compression at which it touches.</param>
/// <param name="StopAt">Compression at which the bump stop touches; infinite where not known.</param>
/// <param name="Stop">Rate of the stop; null where not known.</param>
/// <param name="Squash">How far the stop gives until it is solid; infinite where not known.</param>
/// <param name="Droop">Extension at which the wheel hangs; infinite where not known.</param>
internal readonly record struct SpringStages(double Rate, double Helper, double HelperAt, double StopAt, double? Stop, double Squash, double Droop)
{
    /// <summary>Compression under <paramref name="force"/> more than in the taped state, and the rate there.</summary>
    public (double Compression, double Rate, Rest End) Under(double force)
    {
        if (force <= 0) return force / Rate < -Droop ? (-Droop, Rate, Rest.AtDroop) : (force / Rate, Rate, Rest.Free);
        double at = 0, carried = 0, rate = Rate;
        foreach (var (where, added) in Touches())
        {
            var there = carried + (rate * (where - at));
            if (force <= there) break;
            if (added is null) return (where, rate, Rest.OnUnknownStop);
            (at, carried, rate) = (where, there, rate + added.Value);
        }
        var x = at + ((force - carried) / rate);
        return x > StopAt + Squash ? (StopAt + Squash, rate, Rest.Solid) : (x, rate, x > StopAt ? Rest.OnStop : Rest.Free);
    }

    private IEnumerable<(double Where, double? Added)> Touches()
    {
        (double Where, double? Added)[] both = [(HelperAt, Helper), (StopAt, Stop)];
        return both.Where(t => double.IsFinite(t.Where)).OrderBy(t => t.Where);
    }
}
