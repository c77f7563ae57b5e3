using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>How uncertain the ledger is, against repeated draws and against hand arithmetic (JCGM 100:2008, 5.1.2 and 5.2.2).</summary>
public sealed class LedgerErrorTests
{
    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1065 kg","rear":"1085 kg"},"readingError":"2 kg","wheelbase":"2560 mm","height":"0.72 m","datumHeight":"0 m","condition":"empty","fitted":{}}],
        """;

    private const string Rack = """
        ,{"id":"rack","parent":"vehicle","title":"Rack","options":[{"id":"as-found","class":"none"},{"id":"roof","class":"upgrade","originality":0,"masses":[{"id":"it","mass":"45 kg","at":["1.35 m","0 m","1.95 m"],"basis":"assumed"}]}]}
        """;

    private const string Fitted = """{"id":"working","base":null,"choices":{"rack":"roof"}}""";

    [Fact]
    public void A_weighed_vehicle_is_as_uncertain_as_its_readings()
    {
        // Two readings of 2 kg each: root 2 times 2 kg on the mass; 2 kg on either axle.
        var sheet = Opened.Vehicle("", top: Weighed).Sheet();
        Assert.Equal(2 * Math.Sqrt(2), sheet.Key("mass.empty.total")!.Value.PlusMinus, 1e-9);
        Assert.Equal(2, sheet.Key("axle.front.empty.load")!.Value.PlusMinus, 1e-6);
        Assert.Equal(2, sheet.Key("axle.rear.empty.load")!.Value.PlusMinus, 1e-6);
    }

    [Fact]
    public void A_guessed_part_adds_its_own_doubt_to_the_axle_that_carries_it()
    {
        // 20 % of 45 kg is 9 kg, of which 1.35 / 2.56 stands on the rear axle; its place, 75 mm, moves 45 x 0.075 / 2.56 kg from axle to axle.
        var sheet = Opened.Vehicle(Rack, Fitted, Weighed).Sheet();
        double onRear = 9 * 1.35 / 2.56, place = 45 * 0.075 / 2.56;
        Assert.Equal(Math.Sqrt(8 + 81), sheet.Key("mass.empty.total")!.Value.PlusMinus, 1e-6);
        Assert.Equal(Math.Sqrt(4 + (onRear * onRear) + (place * place)), sheet.Key("axle.rear.empty.load")!.Value.PlusMinus, 1e-6);
        Assert.Equal(Math.Sqrt(4 + Math.Pow(9 - onRear, 2) + (place * place)), sheet.Key("axle.front.empty.load")!.Value.PlusMinus, 1e-6);
    }

    // Second method: the same errors drawn at random, 60,000 times, the center of gravity worked out each time.
    [Fact]
    public void The_center_of_gravity_spreads_as_repeated_draws_do()
    {
        var sheet = Opened.Vehicle(Rack, Fitted, Weighed).Sheet();
        var random = new Random(11);
        double Normal(double sigma) => sigma * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var entries = sheet.Ledger.EntriesIn("empty");
        double height = 0.010; // a stated height is known to a centimetre
        var draws = Enumerable.Range(0, 60000).Select(_ =>
        {
            double m = 0, mx = 0, mz = 0, lift = Normal(height);
            foreach (var e in entries)
            {
                double kg = e.Kilograms + Normal(e.MassError), z = e.Z + Normal(e.PlaceError) + (e.Part == LedgerPart.Weighed ? lift : 0);
                (m, mx, mz) = (m + kg, mx + (kg * (e.X + Normal(e.PlaceError))), mz + (kg * z));
            }
            return (X: mx / m, Z: mz / m);
        }).ToList();
        Assert.Equal(Spread(draws.Select(d => d.X)), sheet.Key("mass.empty.center-x")!.Value.PlusMinus, 0.02 * Spread(draws.Select(d => d.X)));
        Assert.Equal(Spread(draws.Select(d => d.Z)), sheet.Key("mass.empty.center-z")!.Value.PlusMinus, 0.02 * Spread(draws.Select(d => d.Z)));
    }

    [Fact]
    public void What_stays_on_board_brings_no_doubt_of_its_own()
    {
        const string Crew = """ "conditions":{"loaded":[{"id":"crew","mass":"150 kg","at":["1.2 m","0 m","0.5 m"],"basis":"assumed"}]}, """;
        var weighedLoaded = Weighed.Replace("\"condition\":\"empty\"", "\"condition\":\"loaded\"", StringComparison.Ordinal);
        var sheet = Opened.Vehicle("", top: Crew + weighedLoaded).Sheet();
        Assert.Equal(2 * Math.Sqrt(2), sheet.Key("mass.loaded.total")!.Value.PlusMinus, 1e-9);
        Assert.True(sheet.Key("mass.empty.total")!.Value.PlusMinus > 29);
    }

    [Fact]
    public void Entries_add_up_to_what_the_sheet_says()
    {
        var sheet = Opened.Vehicle(Rack, Fitted, Weighed).Sheet();
        var entries = sheet.Ledger.EntriesIn("empty");
        Assert.Equal(Opened.Told(sheet, "mass.empty.total"), entries.Sum(e => e.Kilograms), 9);
        Assert.Equal(Opened.Told(sheet, "mass.empty.moment-x"), entries.Sum(e => e.MomentX), 9);
        Assert.Equal(Opened.Told(sheet, "mass.empty.moment-z"), entries.Sum(e => e.MomentZ), 9);
        Assert.Equal(["front", "rear", "it"], entries.Select(e => e.Item));
    }

    [Fact]
    public void A_published_part_is_less_doubtful_than_a_guessed_one()
    {
        double Doubt(Basis basis) => Opened.Vehicle(Rack.Replace("assumed", basis.ToString().ToLowerInvariant(), StringComparison.Ordinal), Fitted, Weighed).Sheet().Key("mass.empty.total")!.Value.PlusMinus;
        Assert.True(Doubt(Basis.Measured) < Doubt(Basis.Published) && Doubt(Basis.Published) < Doubt(Basis.Vendor) && Doubt(Basis.Vendor) < Doubt(Basis.Assumed));
    }

    private static double Spread(IEnumerable<double> values)
    {
        var list = values.ToList();
        var mean = list.Average();
        return Math.Sqrt(list.Average(v => (v - mean) * (v - mean)));
    }
}
