using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>Lays the readings of the weighing that counts on the sheet, so that its calculations show what they say.</summary>
internal static class WeighingKeys
{
    public static void Publish(EvaluationPlan plan, WeighedState weighed, KeyState[] keys)
    {
        var w = weighed.Weighing;
        void Put(string name, double value, double error)
        {
            if (plan.Space.KeyId("weighing." + name) is not (>= 0 and var key) || double.IsNaN(value)) return;
            ref var k = ref keys[key];
            (k.Exists, k.Value, k.Source, k.Basis, k.PlusMinus) = (true, Value.Of(value), Source.Calculated, Slots.Basis.Measured, error);
            k.RestsOn = new(plan.LeafCount);
        }
        foreach (var entry in weighed.Entries)
        {
            Put($"{entry.Item}.reading", entry.Kilograms, entry.MassError);
            if (w.ByWheel && entry.Item.EndsWith(".right", StringComparison.Ordinal)) Put($"{entry.Item.Split('.')[0]}.track", 2 * entry.Y, double.NaN);
        }
        Put("total", weighed.Sum.Mass, Math.Sqrt(weighed.Entries.Sum(e => e.MassError * e.MassError)));
        Put("wheelbase", w.Wheelbase, double.NaN);
        if (w.Raised is not { } raised) return;
        var (down, up) = raised.Lifted == "rear" ? (raised.RadiusFront, raised.RadiusRear) : (raised.RadiusRear, raised.RadiusFront);
        var level = weighed.Entries.Where(e => !e.Item.StartsWith(raised.Lifted, StringComparison.Ordinal)).Sum(e => e.Kilograms);
        Put("scale-axle.level", level, double.NaN);
        Put("scale-axle.raised", raised.Reading, double.NaN);
        Put("scale-axle.wheel-radius", down, double.NaN);
        Put("lifted-axle.wheel-radius", up, double.NaN);
        Put("lifted-axle.lift", raised.By, double.NaN);
        Put("reading-error", WeighedState.ErrorOf(w, level), double.NaN);
    }
}
