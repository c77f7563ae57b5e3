using System.Text.Json.Nodes;
using Crossmember.Engineering.Brakes.Heat;
using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Brakes.Heat;

/// <summary>Iron, faces and cooling of a brake from what a builder measures.</summary>
public class HeatStoreTests
{
    private const string Ring = """ "kind":{"left":"disc","right":"disc"},"rotorDiameter":{"left":"300 mm","right":"300 mm"},"padInnerDiameter":{"left":"190 mm","right":"190 mm"} """;

    // pi/4 (0.3^2 - 0.19^2) x 0.022 x 7200 = 6.705 kg; vented 0.65 of it.
    [Theory]
    [InlineData("solid", 6.705)]
    [InlineData("vented", 4.358)]
    public void A_rotor_by_its_dimensions_is_assumed_and_asks_for_a_scale(string vented, double kg)
    {
        var r = Store($$"""{{Ring}},"rotorThickness":{"left":"22 mm","right":"22 mm"},"rotorVented":{"left":"{{vented}}","right":"{{vented}}"}""");
        r.Gives("mass", kg, 0.001);
        Assert.Equal("caution", r.Verdict("weighed"));
        Assert.Contains("weigh one rotor", Text(r));
    }

    [Fact]
    public void A_weighed_rotor_passes_and_the_lighter_side_counts()
    {
        var r = Store($$"""{{Ring}},"rotorThickness":{"left":"22 mm","right":"22 mm"},"rotorMass":{"left":"7.5 kg","right":"7.2 kg"}""");
        r.Gives("mass", 7.2, 1e-9);
        Assert.Equal("pass", r.Verdict("weighed"));
    }

    [Fact]
    public void Nothing_measured_names_the_measurement()
    {
        var r = Store(""" "kind":{"left":"disc","right":"disc"} """);
        Assert.Equal("unknown", r.Verdict("weighed"));
        Assert.Contains("weigh one rotor; or measure its diameter and thickness", Text(r));
        Assert.Null(r.Number("mass"));
        Assert.Contains("weigh one drum", Text(Store(""" "kind":{"left":"drum","right":"drum"} """)));
    }

    [Fact]
    public void A_drum_on_one_side_and_a_disc_on_the_other_cannot_be_right() =>
        Assert.Equal("fail", Store(""" "kind":{"left":"drum","right":"disc"} """).Verdict("weighed"));

    [Theory]
    [InlineData("190 mm", "300 mm", "caution")]
    [InlineData("290 mm", "280 mm", "fail")]
    [InlineData("310 mm", "320 mm", "fail")]
    public void A_ring_without_width_is_a_wrong_reading(string inner, string outer, string verdict)
    {
        var r = Store($$"""
            "kind":{"left":"disc"},"rotorDiameter":{"left":"300 mm"},"rotorThickness":{"left":"22 mm"},"padInnerDiameter":{"left":"{{inner}}"},"padOuterDiameter":{"left":"{{outer}}"}
            """);
        Assert.Equal(verdict, r.Verdict("weighed"));
        Assert.Equal(verdict == "fail", r.Number("mass") is null);
    }

    // A rotor nobody looked at counts as vented for its mass, as solid for its cooling: both to the hot side.
    [Fact]
    public void What_nobody_looked_at_errs_to_the_hot_side()
    {
        JsonObject Of(string more) => Store($$"""{{Ring}},"rotorThickness":{"left":"22 mm","right":"22 mm"}{{more}}""");
        JsonObject unseen = Of(""), solid = Of(""","rotorVented":{"left":"solid","right":"solid"}"""), vented = Of(""","rotorVented":{"left":"vented","right":"vented"}""");
        Assert.Equal(vented.Number("mass"), unseen.Number("mass"));
        Assert.Equal(solid.Number("cooling"), unseen.Number("cooling"));
        Assert.True(vented.Number("cooling") > solid.Number("cooling"));
    }

    // 7.5 kg x 480 J/(kg K) = 3600 J/K; 500 s: 7.2 W/K, 720 W at 100 K. It replaces the film.
    [Fact]
    public void A_timed_cooling_replaces_the_film() =>
        Store($$"""{{Ring}},"rotorThickness":{"left":"22 mm","right":"22 mm"},"rotorMass":{"left":"7.5 kg","right":"7.5 kg"},"coolingTime":{"left":"480 s","right":"500 s"}""")
            .Gives("cooling", 720, 1e-9);

    // Limpert's films from memory: 0.04 (k/D) Re^0.8 and 0.1 (k/D) Re^(2/3), k 0.026, nu 1.57e-5: 95 W/(m2 K) for a rotor of 280 mm at 40 mph, 41 for a drum of 300 mm; by hand.
    [Fact]
    public void Films_are_those_of_the_book_as_remembered()
    {
        Assert.Equal(94.4, Airflow.Film(false, 0.28, false), 0.5);
        Assert.Equal(42.3, Airflow.Film(true, 0.3, false), 0.3);
        Assert.Equal(1.5, Airflow.Film(false, 0.28, true) / Airflow.Film(false, 0.28, false), 1e-12);
    }

    [Fact]
    public void Standing_air_cools_least_and_the_film_is_met_at_forty_miles_an_hour()
    {
        var flow = Airflow.Of(false, 800, 0.1);
        Assert.Equal(8, flow.At(Airflow.ReferenceSpeed), 1e-12);
        Assert.Equal(0.6, flow.At(0), 1e-12);
        Assert.True(flow.At(5) < flow.At(10));
    }

    private static JsonObject Store(string members) => Door.Run("brakes.heat-store", $$"""{ {{members}} }""");

    private static string Text(JsonObject r) => r.Finding("weighed")["text"]!.GetValue<string>();
}
