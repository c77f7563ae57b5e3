using Crossmember.Builds.Evaluation;

namespace Crossmember.Builds.Searching;

/// <summary>The search for brakes: judged by every calculation of the brakes, ranked by pedal force, balance, cost and what hangs on the wheels.</summary>
public static class BrakeSearch
{
    private const string Area = "brakes.", Page = "Brakes";

    /// <summary>Readings and advice judge no part; heat is slow and is looked at on the whole sheets of the best.</summary>
    private static readonly string[] s_noJudge = ["brakes.gauge-check", "brakes.road-test", "brakes.best-valve"],
        s_slow = ["brakes.drive-heat", "brakes.repeated-stops", "brakes.descent", "brakes.stop-heat"];

    /// <param name="heat">Whether heat is judged of every combination, and not only of the best.</param>
    public static SearchGoal Goal(bool heat = false) => new(
        i => Decides(i) && (heat || !s_slow.Contains(i.Calculation.Id)), Decides, ("brakes.stop", "pedalForce"), ("brakes.adhesion", "frontOverRear"), slot => slot.StartsWith("axle", StringComparison.Ordinal));

    private static bool Decides(Instance i) => (i.Calculation.Id.StartsWith(Area, StringComparison.Ordinal) && !s_noJudge.Contains(i.Calculation.Id)) || i.Calculation.Id == "lift.hose-length";

    public static PartsSearch Of(Sheet sheet, bool heat = false) => new(sheet, Goal(heat), page => page == Page);
}
