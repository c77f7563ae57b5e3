using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>The shipped bindings hold together: every name exists, dimensions fit, one publisher per pattern, no loop.</summary>
public sealed class CatalogueTests
{
    [Fact]
    public void Every_calculation_is_bound_once() =>
        Assert.Equal(CalculationList.All.Select(c => c.Id), Catalogue.Shipped.Bindings.Select(b => b.Calculation.Id).Order(StringComparer.Ordinal));

    [Fact]
    public void Bindings_name_real_inputs_outputs_checks_and_sets()
    {
        foreach (var b in Catalogue.Shipped.Bindings)
        {
            Assert.All(b.Inputs.Keys, i => Assert.True(b.Calculation.InputIndex(i) >= 0, $"{b.Calculation}: no input {i}"));
            Assert.All(b.Publishes.Keys, o => Assert.True(b.Calculation.OutputIndex(o) >= 0, $"{b.Calculation}: no output {o}"));
            Assert.All(b.Raises ?? [], c => Assert.Contains(b.Calculation.About.Checks, k => k.Id == c));
            Assert.All(b.ForEach, s => Assert.True(Sets.IsKnown(s), $"{b.Calculation}: no set {s}"));
        }
    }

    [Fact]
    public void Inputs_and_outputs_have_the_dimension_of_their_parameter()
    {
        foreach (var b in Catalogue.Shipped.Bindings)
        {
            foreach (var (input, pattern) in b.Inputs.Where(i => !(i.Value[0] == '{' && !i.Value.Contains('.', StringComparison.Ordinal))))
                Assert.Equal(Of(pattern).Dimension, b.Calculation.InputSpecs[b.Calculation.InputIndex(input)].Dimension);
            foreach (var (output, pattern) in b.Publishes)
                Assert.Equal(Of(pattern).Dimension, b.Calculation.OutputSpecs[b.Calculation.OutputIndex(output)].Dimension);
        }
    }

    [Fact]
    public void Sets_in_braces_are_those_the_instance_runs_over()
    {
        foreach (var b in Catalogue.Shipped.Bindings)
            foreach (var pattern in b.Inputs.Values.Concat(b.Publishes.Values))
                Assert.All(pattern.Split('.').Where(s => s[0] == '{'), s => Assert.Contains(s[1..^1], b.ForEach));
    }

    [Fact]
    public void A_publisher_comes_before_its_readers()
    {
        var order = Catalogue.Shipped.Bindings.Select((b, i) => (b, i)).ToDictionary(x => x.b.Calculation.Id, x => x.i);
        Assert.True(order["tires.dimensions"] < order["tires.axle-diameter"]);
        Assert.True(order["tires.axle-diameter"] < order["driveline.cruise"]);
        Assert.True(order["mass.wheel-load"] < order["tires.load"]);
    }

    [Fact]
    public void Two_publishers_or_a_loop_are_refused()
    {
        var b = Catalogue.Shipped.Bindings.Single(b => b.Calculation.Id == "tires.axle-diameter");
        Assert.Throws<InvalidOperationException>(() => new Catalogue(ParameterTable.Shipped, [b, b with { Raises = [] }]));
        var loop = b with { Publishes = new Dictionary<string, string> { ["diameter"] = "wheel.{axle}.left.tire.diameter" } };
        Assert.Throws<InvalidOperationException>(() => new Catalogue(ParameterTable.Shipped, [loop]));
    }

    private static ParameterPattern Of(string pattern)
    {
        var shape = string.Join('.', pattern.Split('.').Select(s => s[0] == '{' ? "*" : s));
        return ParameterTable.Shipped.Of(shape) ?? throw new InvalidOperationException($"{pattern} is declared nowhere");
    }
}
