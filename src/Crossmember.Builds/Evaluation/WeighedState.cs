using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Mass;

namespace Crossmember.Builds.Evaluation;

/// <summary>What scale readings say of the vehicle that stood on them: mass and moments about the as-found front axle on the frame datum plane.</summary>
internal sealed class WeighedState
{
    /// <summary>A place reading less than this share of an even one is as good as hanging. Common practice, no source.</summary>
    private const double Hanging = 0.05;

    private readonly List<(string What, Verdict Verdict, string Text)> _findings = [];

    private WeighedState(Weighing weighing) => Weighing = weighing;

    public Weighing Weighing { get; }

    /// <summary>One line for every reading.</summary>
    public IReadOnlyList<LedgerEntry> Entries { get; private set; } = [];

    public Moments Sum { get; private set; }

    /// <summary>One standard uncertainty of the height, which all readings share, m.</summary>
    public double HeightError { get; private set; }

    /// <summary>Readings that cannot be, or are odd; what cannot be makes the weighing worthless.</summary>
    public IReadOnlyList<(string What, Verdict Verdict, string Text)> Findings => _findings;

    public bool Stands => !_findings.Exists(f => f.Verdict == Verdict.Fail && f.What != "raised");

    public static WeighedState Of(EvaluationPlan plan, Build build, Weighing w, Choices fitted)
    {
        var state = new WeighedState(w);
        state.Look(w);
        double height = state.HeightOver(w), z = w.DatumHeight is { } datum ? height - datum : double.NaN;
        state.Entries = [.. w.Readings.Select(r => Reading(plan, build, w, fitted, r.Key, r.Value, z))];
        var sum = default(Moments);
        foreach (var entry in state.Entries) sum.Add(entry);
        // Their sum is the moment however the height is shared among the readings.
        sum.Z = sum.Mass * z;
        state.Sum = sum;
        return state;
    }

    public static double ErrorOf(Weighing w, double reading) => w.ReadingError ?? (MassSpread.Reading.Share * reading);

    private static LedgerEntry Reading(EvaluationPlan plan, Build build, Weighing w, Choices fitted, string place, double kg, double z)
    {
        var parts = place.Split('.');
        var x = parts[0] switch { "front" => 0, "rear" => w.Wheelbase, _ => double.NaN };
        var y = w.ByWheel ? Offset(parts[1], Track(plan, build, fitted, parts[0])) : double.NaN;
        return new(LedgerPart.Weighed, w.Date, null, place, kg, x, y, z, Basis.Measured, ErrorOf(w, kg), 0);
    }

    private void Look(Weighing w)
    {
        var all = w.Readings.Values.Sum();
        foreach (var (place, kg) in w.Readings.Where(r => r.Value <= Hanging * all / w.Readings.Count))
            _findings.Add((place, Verdict.Fail, w.ByWheel
                ? $"The weighing of {w.Date} reads {kg:0} kg under the {Told(place)} wheel: so the vehicle would stand on three wheels. Level the scales and read all four again."
                : $"The weighing of {w.Date} reads {kg:0} kg under the {place} axle: so the weight would lie at the other axle or beyond it. Weigh both axles again."));
        if (!w.ByWheel || _findings.Count > 0 || w.Readings.Count != 4) return;
        var cross = (w.Readings.GetValueOrDefault("front.right") + w.Readings.GetValueOrDefault("rear.left")) / all;
        if (Math.Abs(cross - 0.5) > 0.05)
            _findings.Add(("diagonal", Verdict.Caution, $"In the weighing of {w.Date} right front and left rear carry {100 * cross:0.0} % together: scales out of level, a tired spring or a twisted frame. The sum holds all the same."));
    }

    /// <summary>Center of gravity over the ground as stated, or as the raised reading tells; NaN where neither does.</summary>
    private double HeightOver(Weighing w)
    {
        if (w.Height is { } stated)
        {
            HeightError = MassSpread.Of("measured").Place;
            return stated;
        }
        if (w.Raised is not { } raised) return double.NaN;
        double On(string axle) => w.Readings.Where(r => r.Key == axle || r.Key.StartsWith(axle + ".", StringComparison.Ordinal)).Sum(r => r.Value);
        var rear = raised.Lifted == "rear";
        double level = On(rear ? "front" : "rear"), all = w.Readings.Values.Sum();
        var lift = new RaisedAxle(w.Wheelbase, all, level, raised.Reading, raised.By, rear ? raised.RadiusFront : raised.RadiusRear, rear ? raised.RadiusRear : raised.RadiusFront);
        if (lift.Impossible() is { } fault)
        {
            _findings.Add(("raised", Verdict.Fail, $"The weighing of {w.Date} with the {raised.Lifted} axle raised cannot be: {fault}."));
            return double.NaN;
        }
        if (raised.Reading < level)
            _findings.Add(("raised", Verdict.Caution, $"In the weighing of {w.Date} the axle on the scale got lighter when the {raised.Lifted} axle was lifted: read both again, springs blocked."));
        else if (raised.By < RaisedAxle.LeastRaise)
            _findings.Add(("raised", Verdict.Caution, $"In the weighing of {w.Date} the {raised.Lifted} axle was lifted {1000 * raised.By:0} mm only: a kilogram on the scale is {1000 * lift.Sensitivity:0.0} mm of height. Lift it {1000 * RaisedAxle.LeastRaise:0} mm or more."));
        // An axle on two scales has the error of both.
        HeightError = lift.Spread(w.ByWheel ? Math.Sqrt(w.Readings.Where(r => r.Key.StartsWith(rear ? "front." : "rear.", StringComparison.Ordinal)).Sum(r => Math.Pow(ErrorOf(w, r.Value), 2))) : ErrorOf(w, level));
        return lift.Height;
    }

    private static string Told(string place) => place.Split('.') is [var axle, var side] ? $"{side} {axle}" : place;

    private static double Offset(string side, double track) => side switch { "left" => -track / 2, "right" => track / 2, _ => double.NaN };

    /// <summary>The track of what was fitted that day; NaN where nobody said or two options disagree.</summary>
    private static double Track(EvaluationPlan plan, Build build, Choices fitted, string axle)
    {
        var key = plan.Space.KeyId($"axle.{axle}.track");
        var stated = build.Slots.SelectMany(s => plan.Compiled(build, s, fitted[s.Id]).Values).Where(v => v.Key == key).ToList();
        return stated.Count == 1 && key >= 0 ? stated[0].Stated.Value.Number : double.NaN;
    }
}
