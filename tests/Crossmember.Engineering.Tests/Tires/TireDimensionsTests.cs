using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Tires;

public class TireDimensionsTests
{
    // Size code by hand: 25.4 x 18 + 2 x 245 x 0.55 = 726.7 mm. Tolerance: half of 0.1 mm. A table in circulation prints 28.63 in by its own rounding.
    [Fact]
    public void A_metric_size_gives_rim_and_two_section_heights() =>
        Door.Run("tires.dimensions", """{"size":"245/55R18"}""").Gives("diameter", 726.7 / 25.4, 0.05 / 25.4);

    // Derived: 63360 / (33 pi) = 611.15. Tolerance: half of the last decimal.
    [Fact]
    public void A_flotation_size_gives_the_diameter_it_names()
    {
        var r = Door.Run("tires.dimensions", """{"size":"33x10.50R15LT"}""");
        r.Gives("diameter", 33, 1e-9);
        r.Gives("width", 10.5, 1e-9);
        r.Gives("revolutionsPerMile", 611.15, 0.005);
    }

    // Rolling circumference 3.05 D (ETRTO convention, from memory) gives 629.5 rev/mile: what the validity text promises is "about 3 % more often".
    [Fact]
    public void A_loaded_radial_turns_about_three_per_cent_more_often_than_the_nominal_circle() =>
        Assert.Equal(0.03, (629.5 / Door.Run("tires.dimensions", """{"size":"33x10.50R15"}""").Number("revolutionsPerMile")!.Value) - 1, 0.0005);

    [Fact]
    public void A_numeric_size_does_not_tell_the_diameter_and_says_how_to_measure_it()
    {
        var r = Door.Run("tires.dimensions", """{"size":"7.50R16"}""");
        Assert.Null(r.Number("diameter"));
        Assert.Null(r.Number("revolutionsPerMile"));
        r.Gives("width", 7.5, 1e-9);
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("tape once around the tread", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("banana")]
    [InlineData("")]
    [InlineData("235/R15")]
    public void A_text_that_is_no_size_is_a_fault(string size) =>
        Assert.Equal("/size", Assert.Single(Door.Faults("tires.dimensions", $$"""{"size":"{{size}}"}""")).Path);
}
