using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>What a rule asks of brakes with something lost. Where it asks nothing: a quarter of g with 500 N, common practice, no source.</summary>
internal readonly record struct FailureAsked(string Rule)
{
    private const double Usual = 0.25 * Loading.Gravity;

    /// <summary>Rules that do not tell assist from circuit ask the same of both.</summary>
    public BrakeRule? Row(string test) => BrakeRule.Find(Rule, test) ?? BrakeRule.Find(Rule, "secondary");

    /// <summary>N of pedal.</summary>
    public double Force(string test) => Row(test)?.MostForce ?? StopAsked.UsualForce;

    public string Law(BrakeRule? row) => row is not null ? $" {BrakeRule.LocalLaw}" : Rule == BrakeRule.None ? ""
        : $" What the rule itself asks here could not be read: a quarter of g is common practice. {BrakeRule.LocalLaw}";

    /// <summary>m/s2.</summary>
    public double Least(string test) => Row(test)?.Demand ?? Usual;
}

/// <summary>A sentence for each loss.</summary>
internal static class FailureFindings
{
    private const string NothingLeft = "All four wheels hang on one circuit: one leak anywhere and the pedal goes to the floor with nothing left but the parking brake.";

    private const string Single = "A single master cylinder feeds one circuit, however its lines are run: a leak anywhere takes all four brakes.";

    private const string ByNature = "one circuit: by its nature";

    public static void Answer(Worksheet w, in FailureAsked asked, in Left left, string circuits, bool single, bool boosted, bool valveActs)
    {
        if (boosted) Case(w, "booster-dead", "With the booster dead", "assist-failed", asked, left.BoosterDead, "", null);
        else w.Answer("booster-dead", Verdict.Pass, "There is no booster to fail.");
        if (circuits == Failure.One)
        {
            w.Answer("front-lost", Verdict.Fail, single ? Single : "One circuit for all four wheels: a leak at the front takes the rear brakes with it.", 0, "m/s2", ByNature);
            w.Answer("rear-lost", Verdict.Fail, single ? Single : "One circuit for all four wheels: a leak at the rear takes the front brakes with it.", 0, "m/s2", ByNature);
            w.Answer("hose", Verdict.Fail, NothingLeft, source: ByNature);
            return;
        }
        var diagonal = circuits == Failure.Diagonal;
        var aside = diagonal ? "; it pulls to one side" : "";
        Case(w, "front-lost", diagonal ? "With one half of the diagonal split lost" : valveActs ? "With the front circuit lost and the rear valve still acting" : "With the front circuit lost",
            "circuit-failed", asked, left.FrontLost, aside, left.FrontFloor);
        Case(w, "rear-lost", diagonal ? "With the other half lost" : "With the rear circuit lost", "circuit-failed", asked, left.RearLost, aside, left.RearFloor);
        var least = Math.Min(left.FrontLost.Z, left.RearLost.Z);
        w.Answer("hose", least * Loading.Gravity < asked.Least("circuit-failed") ? Verdict.Caution : Verdict.Pass, diagonal ? $"A burst hose takes the half it hangs on: {least:0.00} g is left."
            : $"A burst hose takes its own end: {left.FrontLost.Z:0.00} g is left when it is a front one, {left.RearLost.Z:0.00} g when it is a rear one.", least, "1", "circuits split");
    }

    private static void Case(Worksheet w, string check, string lost, string test, in FailureAsked asked, in Reached left, string aside, double? floor)
    {
        var row = asked.Row(test);
        double d = left.Z * Loading.Gravity, least = asked.Least(test), force = asked.Force(test);
        var cap = left.Capped ? $", all that the road takes (the brakes would make {left.Brakes:0.00} g)" : "";
        var down = floor is { } at ? $" The pedal is down or the stroke at its end at {at / 1e6:0.0#} MPa: more leg makes no more." : "";
        if (d <= 0) w.Answer(check, Verdict.Fail, $"{lost}, {force:0} N on the pedal make nothing at all.{down}", 0, "m/s2", "statics");
        else w.AtLeast(check, d, least, "m/s2", $"{lost}, {force:0} N on the pedal make {left.Z:0.00} g{cap}{aside}; {least / Loading.Gravity:0.00} g is asked.{down}{asked.Law(row)}",
            row?.Source ?? AdhesionRule.Practice, beyond: row is { Published: true } ? Verdict.Fail : Verdict.Caution);
    }
}
