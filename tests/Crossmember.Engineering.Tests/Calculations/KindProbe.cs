using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>A calculation that exists only to hold inputs that one kind needs and another does not against the framework.</summary>
internal sealed class KindProbe() : Calculation<KindProbe.Inputs, KindProbe.Result>(new()
{
    Id = "probe.kinds",
    Version = 1,
    Title = "Probe",
    Purpose = "Asks for width and depth of what is boxed.",
    Formula = "A = w d",
    Validity = "test only",
    Sources = ["none"],
    Checks = [new("fits", null, "Does it fit?")],
    Examples = [],
})
{
    public sealed record Inputs(
        [Input("kind", OneOf = ["plain", "boxed"])] string Kind,
        [Input("width", "mm", MoreThan = 0, Measure = "tape width")] Length? Width,
        [Input("depth", "mm", MoreThan = 0, Measure = "tape depth")] Length? Depth,
        [Input("spare", "mm", MoreThan = 0, Measure = "tape spare")] Length? Spare);

    public sealed record Result([Output("area", "mm2")] Area? Area);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        if (x.Kind == "boxed" && x.Width is null) w.Lacks("width");
        if (x.Kind == "boxed" && x.Depth is null) w.Lacks("depth");
        if (w.Lacking.Count == 0) w.Answer("fits", Verdict.Pass, "It fits.");
        return new(x.Width * x.Depth);
    }
}
