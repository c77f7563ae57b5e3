using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>A calculation that exists only to hold every form an input and output can take against the framework.</summary>
internal sealed class Probe() : Calculation<Probe.Inputs, Probe.Result>(new()
{
    Id = "probe.all-forms",
    Version = 3,
    Title = "Probe",
    Purpose = "Looks a torque up and doubles each length.",
    Formula = "T = curve(n)",
    Validity = "test only",
    Sources = ["none"],
    Checks = [new("torque", Sense.AtMost, "Is the torque small enough?", "limit")],
    Examples = [],
    Cautions = ["stand clear"],
})
{
    public sealed record Inputs(
        [Input("torque curve", "rpm", CurveUnit = "N m", Measure = "ask")] Curve Curve,
        [Input("engine speed", "rpm", AtLeast = 0, High = 6000, Measure = "read it")] RotationalSpeed Speed,
        [Input("lengths", "mm", MoreThan = 0, Measure = "tape")] Members<Length> Lengths,
        [Input("name", OneOf = ["one", "two"])] string Name,
        [Input("factor", Default = 1)] Ratio Factor,
        [Input("limit", "N m", Measure = "look it up")] Torque? Limit);

    public sealed record Result(
        [Output("torque", "N m")] Torque? Torque,
        [Output("doubled", "mm")] Members<Length> Doubled,
        [Output("told")] string Told);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var torque = x.Curve.At(x.Speed.RadiansPerSecond) * x.Factor.DecimalFractions;
        if (torque is { } t)
        {
            w.Line("T", "curve(n) x factor", $"curve({x.Speed.RevolutionsPerMinute:0}) x {x.Factor.DecimalFractions}", t, "N m");
            if (x.Limit is { } limit) w.AtMost("torque", t, limit.NewtonMeters, "N m", "Small enough or not.", watch: 0.9 * limit.NewtonMeters);
        }
        w.Curve(new("torque", "speed", "rpm", [1000, 2000], "torque", "N m", [1, double.PositiveInfinity]));
        return new(torque is { } known ? Torque.FromNewtonMeters(known) : null, new(x.Lengths.Items.Select(l => (l.Name, l.Value * 2))), x.Name);
    }
}
