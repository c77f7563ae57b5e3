using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The largest torque to reckon with: off the curve where there is one, else as stated.</summary>
internal static class PeakTorque
{
    public const string NoCurve = $"Not known: {HowToMeasurePull.TheTorqueCurve} is missing ({HowToMeasurePull.TorqueCurve}).";

    /// <summary>N m; null where nothing is known, and the check then says what to measure.</summary>
    public static double? Of(FullLoad? full, Torque? stated, Worksheet w, string check)
    {
        if (full is null)
        {
            if (stated is null) w.Answer(check, Verdict.Unknown, NoCurve);
            return stated?.NewtonMeters;
        }
        if (full.Pulls) return full.Peak.Torque;
        w.Answer(check, Verdict.Unknown, Nothing(full));
        return null;
    }

    /// <summary>A curve with nothing usable in it, in words.</summary>
    public static string Nothing(FullLoad full) =>
        $"Not known: the torque curve ({full.Range}) shows no pull between idle and redline. Compare the three.";
}
