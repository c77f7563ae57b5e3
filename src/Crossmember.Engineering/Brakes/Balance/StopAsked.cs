using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>The stop that is asked: by the chosen rule's test with cold brakes, else what the builder calls a hard stop. SI.</summary>
internal readonly record struct StopAsked(BrakeRule? Row, double Speed, double Deceleration, double MostForce)
{
    /// <summary>Where no rule says: 100 km/h, and 500 N of leg, which most rules allow. Common practice, no source.</summary>
    public const double UsualSpeed = 100 / 3.6, UsualForce = 500;

    public static StopAsked Of(string rule, double braking)
    {
        var row = BrakeRule.Find(rule, "cold");
        return new(row, row?.Speed ?? UsualSpeed, row?.Demand ?? braking * Chain.Loading.Gravity, row?.MostForce ?? UsualForce);
    }

    /// <summary>m: as the rule counts it, delay and all; where none says, with brakes that come up in a straight line over a time in s.</summary>
    public double Way(double deceleration, double buildUp) => Row?.Way(deceleration) ?? StoppingDistance.Of(Speed, deceleration, buildUp);

    private string Law => Row is null ? "" : Row.Rule == BrakeRule.Truck105 ? $" That is the rule's early form: its rows for light trucks could not be read. {BrakeRule.LocalLaw}" : $" {BrakeRule.LocalLaw}";

    private string Source => Row?.Source ?? AdhesionRule.Practice;

    /// <summary>Grip of the road that rules drive their tests on, dry and clean; 571.135 S6.2 and UN Regulation 13 ask for such a one. From memory.</summary>
    public const double TestRoad = 0.9;

    /// <param name="force">Pedal force for the deceleration in N; null where no force makes it.</param>
    /// <param name="bare">The same in N for what a published distance takes with no delay at all: beyond it no reading of the rule helps.</param>
    /// <param name="way">m; null where it does not stop.</param>
    /// <param name="there">m on the rule's own road; what the road of the builder takes away is no fault of the brakes.</param>
    public void Answer(Worksheet w, double? force, double? bare, double? way, double? there, in Reached reached, double mu)
    {
        double d = Deceleration / Chain.Loading.Gravity, kmh = Speed * 3.6;
        if (force is { } f)
        {
            var touchy = Row?.LeastForce is { } least && f < least;
            var text = touchy ? $"{d:0.00} g takes only {f:0} N on the pedal, less than the {Row!.LeastForce:0} N that the rule begins at: it bites before a leg can measure it out.{Law}"
                : $"{d:0.00} g takes {f:0} N on the pedal of {MostForce:0} N{(Row is null ? " that a leg should be asked" : " allowed")}.{Law}";
            if (touchy) w.Answer("effort", Verdict.Caution, text, f, "N", Source);
            else w.AtMost("effort", f, MostForce, "N", text, Source, beyond: bare > MostForce ? Verdict.Fail : Verdict.Caution);
        }
        else w.Answer("effort", Verdict.Fail, $"No leg force makes {d:0.00} g: these brakes make no such force at any pressure.", source: "statics");
        if (way is not { } s) w.Answer("distance", Verdict.Fail, $"With {MostForce:0} N on the pedal these brakes do not slow it at all.", source: "statics");
        else if (Row?.Distance is { } limit && reached.Capped && s > limit && there <= limit)
            w.AtMost("distance", there.Value, limit, "m",
                $"From {kmh:0} km/h it stands after {there:0} m of {limit:0} m allowed on a road as rules are driven on, with grip {TestRoad:0.0}; one with grip {mu:0.0#} takes {reached.Z:0.00} g and {s:0} m.{Law}", Source);
        else if (Row?.Distance is { } most)
        {
            // Where the road sets the end, another road would do: the rule is driven on one with good grip.
            w.AtMost("distance", s, most, "m", reached.Capped
                ? $"From {kmh:0} km/h it stands after {s:0} m of {most:0} m allowed: a road with grip {mu:0.0#} takes {reached.Z:0.00} g, the brakes would make {reached.Brakes:0.00} g.{Law}"
                : $"From {kmh:0} km/h with {MostForce:0} N on the pedal it stands after {s:0} m of {most:0} m allowed, at {reached.Z:0.00} g.{Law}", Source,
                beyond: !reached.Capped && reached.Z * Chain.Loading.Gravity < Row.Bare ? Verdict.Fail : Verdict.Caution);
        }
        else
            w.Answer("distance", reached.Z < d - 1e-9 ? Verdict.Caution : Verdict.Pass, $"From {kmh:0} km/h with {MostForce:0} N on the pedal it stands after {s:0} m, at {reached.Z:0.00} g"
                + (reached.Capped ? $", all that a road with grip {mu:0.0#} takes." : reached.Z < d ? $", short of the {d:0.00} g asked." : "."), s, "m", Source);
    }
}
