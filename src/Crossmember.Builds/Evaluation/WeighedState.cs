using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>Turns scale readings into mass and moments about the as-found front axle on the frame datum plane.</summary>
internal static class WeighedState
{
    public static Moments Of(EvaluationPlan plan, Build build, Weighing w, Choices fitted)
    {
        var mass = w.Readings.Values.Sum();
        double x = 0, y = w.ByWheel ? 0 : double.NaN;
        foreach (var (place, kg) in w.Readings)
        {
            var parts = place.Split('.');
            x += parts[0] switch { "front" => 0, "rear" => kg * w.Wheelbase, _ => double.NaN };
            if (w.ByWheel) y += kg * Offset(parts[1], Track(plan, build, fitted, parts[0]));
        }
        var z = w.Height is { } height && w.DatumHeight is { } datum ? mass * (height - datum) : double.NaN;
        return new(mass, x, y, z);
    }

    private static double Offset(string side, double track) => side switch { "left" => -track / 2, "right" => track / 2, _ => double.NaN };

    /// <summary>The track of what was fitted that day; NaN where nobody said or two options disagree.</summary>
    private static double Track(EvaluationPlan plan, Build build, Choices fitted, string axle)
    {
        var key = plan.Space.KeyId($"axle.{axle}.track");
        var stated = build.Slots.SelectMany(s => plan.Compiled(build, s, fitted[s.Id]).Values).Where(v => v.Key == key).ToList();
        return stated.Count == 1 && key >= 0 ? stated[0].Stated.Value.Number : double.NaN;
    }
}
