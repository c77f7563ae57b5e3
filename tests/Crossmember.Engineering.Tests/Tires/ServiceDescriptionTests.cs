using Crossmember.Engineering.Reading;
using Crossmember.Engineering.Tests.Calculations;
using Crossmember.Engineering.Tires;

namespace Crossmember.Engineering.Tests.Tires;

public class ServiceDescriptionTests
{
    // ETRTO Standards Manual / ISO 4000-1 load index table, from memory; the closed form 45 x 10^(index/80) would give 800.2, 897.9 and 1163.4 kg.
    [Theory]
    [InlineData(80, 450)]
    [InlineData(100, 800)]
    [InlineData(104, 900)]
    [InlineData(113, 1150)]
    [InlineData(121, 1450)]
    public void The_table_governs_not_the_formula(int index, double kilograms) => Assert.Equal(kilograms, ServiceDescription.LoadOf(index));

    // The closed form is the table's own law before rounding: a misprint in a copied table stands out against it.
    [Fact]
    public void Loads_rise_without_a_gap_and_stay_within_one_point_eight_per_cent_of_the_closed_form()
    {
        var table = ReferenceTable.Load("load-index.csv");
        Assert.Equal(Enumerable.Range(80, 42).Select(i => $"{i}"), table.Rows.Select(r => table.Text(r, "load-index")));
        var loads = Enumerable.Range(80, 42).Select(i => (Index: i, Load: ServiceDescription.LoadOf(i)!.Value)).ToList();
        // One index is 10^(1/80) = 2.92 %; rounding to whole tens or fives moves a step by less than 0.8 % of the load.
        Assert.All(loads.Zip(loads.Skip(1)), pair => Assert.InRange((pair.Second.Load / pair.First.Load) - 1, 0.0212, 0.0372));
        Assert.All(loads, l => Assert.InRange(l.Load / (45 * Math.Pow(10, l.Index / 80.0)), 0.982, 1.018));
    }

    // Order of the speed symbols after ISO 4000-1, from memory: H stands after U for history's sake.
    [Fact]
    public void Speeds_rise_in_the_order_of_the_symbols()
    {
        var speeds = "KLMNPQRSTUHVWY".Select(c => ServiceDescription.SpeedOf(c.ToString())!.Value * 3.6).ToList();
        Assert.All(speeds.Zip(speeds.Skip(1)), pair => Assert.True(pair.Second > pair.First));
        Assert.Equal([110, 120, 130, 140, 150, 160, 170, 180, 190, 200, 210, 240, 270, 300], speeds.Select(s => (int)Math.Round(s)));
    }

    [Theory]
    [InlineData("113Q", 113, null, "Q")]
    [InlineData("121/118Q", 121, 118, "Q")]
    [InlineData(" 104 s ", 104, null, "S")]
    public void Single_dual_and_symbol_are_read(string text, int single, int? dual, string symbol) =>
        Assert.Equal(new ServiceDescription(single, dual, symbol), ServiceDescription.Read(text));

    [Theory]
    [InlineData("Q113")]
    [InlineData("113")]
    [InlineData("113QQ")]
    [InlineData("1234Q")]
    [InlineData("113/Q")]
    public void Anything_else_is_a_fault_that_shows_what_would_do(string text) =>
        Assert.Contains("121/118Q", Assert.Single(Door.Faults("tires.service-description", $$"""{"serviceDescription":"{{text}}"}""")).Right);

    [Fact]
    public void Outside_the_tables_nothing_is_guessed()
    {
        var r = Door.Run("tires.service-description", """{"serviceDescription":"126A","cruiseSpeed":"65 mph"}""");
        Assert.Null(r.Number("loadRating"));
        Assert.Null(r.Number("speedRating"));
        Assert.Equal("unknown", r.Verdict("speed"));
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("126", StringComparison.Ordinal));
    }

    // Q is 160 km/h = 99.4 mph.
    [Theory]
    [InlineData("65 mph", "pass")]
    [InlineData("99 mph", "pass")]
    [InlineData("100 mph", "fail")]
    public void The_speed_symbol_must_cover_the_cruise_speed(string cruise, string verdict) =>
        Assert.Equal(verdict, Door.Run("tires.service-description", $$"""{"serviceDescription":"113Q","cruiseSpeed":"{{cruise}}"}""").Verdict("speed"));

    [Fact]
    public void Without_a_cruise_speed_only_the_check_is_unknown()
    {
        var r = Door.Run("tires.service-description", """{"serviceDescription":"113Q"}""");
        Assert.Equal("unknown", r.Verdict("speed"));
        Assert.Contains("cruise speed is missing", r.Finding("speed")["text"]!.GetValue<string>());
        r.Gives("loadRating", 1150, 1e-9);
    }
}
