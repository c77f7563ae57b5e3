using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>What every calculation must satisfy, whoever wrote it: read off the one list.</summary>
public partial class CatalogueTests
{
    public static TheoryData<string> Ids => [.. CalculationList.All.Select(c => c.Id)];

    [Fact]
    public void The_frozen_calculations_of_tires_and_driveline_are_there() =>
        Assert.Superset(new HashSet<string> { "driveline.engine-speed", "driveline.cruise", "tires.dimensions" }, CalculationList.All.Select(c => c.Id).ToHashSet());

    [Theory]
    [MemberData(nameof(Ids))]
    public void Names_are_told_in_the_formats_own_style(string id)
    {
        var c = CalculationList.Find(id)!;
        Assert.Matches(DottedKebab(), c.Id);
        Assert.All(c.InputSpecs.Select(i => i.Name).Concat(c.OutputSpecs.Select(o => o.Name)), n => Assert.Matches(Camel(), n));
        Assert.All(c.About.Checks, check => Assert.Matches(Kebab(), check.Id));
        Assert.DoesNotContain(c.InputSpecs, i => i.Name == "note"); // a note is allowed in every object
        Assert.Equal(c.About.Checks.Count, c.About.Checks.Select(k => k.Id).Distinct().Count());
        Assert.All(c.About.Checks.SelectMany(k => k.Needs).Concat(c.About.Either), n => Assert.True(c.InputSpecs[c.InputIndex(n)].Optional, $"{n} is no optional input"));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_description_is_complete(string id)
    {
        var c = CalculationList.Find(id)!;
        Assert.True(c.About.Version >= 1);
        Assert.All([c.About.Title, c.About.Purpose, c.About.Formula, c.About.Validity], text => Assert.NotEmpty(text));
        Assert.NotEmpty(c.About.Sources);
        Assert.NotEmpty(c.OutputSpecs);
        Assert.All(c.InputSpecs, i => Assert.True(i.About.Measure.Length > 0 || i.About.OneOf.Length > 0, $"{i.Name} does not say how to get it"));
        Assert.All(c.InputSpecs, i => Assert.True(i.About.Low <= i.About.High, i.Name));
        Assert.All(c.InputSpecs, i => Assert.True(i.DefaultSi is not { } d || (i.Outside(d) is null && i.InRange(d)), $"the default of {i.Name} is outside its own range"));
        Assert.All(c.OutputSpecs, o => Assert.Equal(o.Dimension, o.Unit?.Dimension));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void An_example_from_outside_comes_out_of_the_json_door(string id)
    {
        var c = CalculationList.Find(id)!;
        Assert.Contains(c.About.Examples, e => e.Provenance != Provenance.Pinned);
        foreach (var example in c.About.Examples)
        {
            Assert.NotEmpty(example.Source);
            Assert.NotEmpty(example.Outputs);
            Assert.InRange(example.Tolerance, 0, 0.05);
            var result = Door.Run(c, CatalogueJson.InputOf(example).ToJsonString());
            foreach (var (name, expected) in example.Outputs) result.Gives(name, expected, example.Tolerance * Math.Abs(expected));
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Every_numeric_input_has_a_trend_or_a_written_reason(string id)
    {
        var c = CalculationList.Find(id)!;
        foreach (var input in c.InputSpecs.Where(i => i.Form is Form.Number or Form.Curve || (i.Form == Form.Members && i.Unit is not null)))
            Assert.True(c.About.Trends.Any(t => t.Input == input.Name) || c.About.NoTrends.Any(n => n.Input == input.Name && n.Why.Length > 0), $"{input.Name} has neither");
        Assert.All(c.About.NoTrends, n => Assert.True(c.InputIndex(n.Input) >= 0, n.Input));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Declared_trends_hold_over_their_range(string id)
    {
        var c = CalculationList.Find(id)!;
        foreach (var trend in c.About.Trends)
        {
            var spec = c.InputSpecs[c.InputIndex(trend.Input)];
            Assert.True(spec.InRange(spec.Unit!.ToSi(trend.Low)) && spec.InRange(spec.Unit.ToSi(trend.High)), $"the trend of {trend.Input} leaves its validity");
            var inputs = CatalogueJson.InputOf(ExampleFor(c, trend));
            double At(double x) => Door.Run(c, With(inputs, spec, x).ToJsonString()).Number(trend.Output)!.Value * (trend.Sign == '+' ? 1 : -1);
            Gen.Select(Gen.Double[0, 1], Gen.Double[0.001, 1]).Sample((at, step) =>
            {
                var low = trend.Low + ((trend.High - trend.Low) * at * 0.999);
                var high = low + ((trend.High - low) * step);
                return At(high) > At(low);
            }, iter: 50);
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_unit_an_input_is_typed_in_makes_no_difference(string id)
    {
        var c = CalculationList.Find(id)!;
        foreach (var example in c.About.Examples)
        {
            var inputs = CatalogueJson.InputOf(example);
            var expected = Door.Run(c, inputs.ToJsonString());
            foreach (var spec in c.InputSpecs.Where(s => s.Form == Form.Number && inputs.ContainsKey(s.Name)))
                foreach (var unit in Units.Of(spec.Dimension!))
                {
                    var si = ShopNotation.Read(inputs[spec.Name]!.GetValue<string>(), spec.Dimension!).Value!.Si;
                    var again = inputs.DeepClone().AsObject();
                    again[spec.Name] = $"{unit.FromSi(si):R} {unit.Code}";
                    var actual = Door.Run(c, again.ToJsonString());
                    foreach (var output in c.OutputSpecs.Where(o => o.Form == Form.Number))
                        Assert.Equal(expected.Number(output.Name) ?? double.NaN, actual.Number(output.Name) ?? double.NaN, Within(expected.Number(output.Name)));
                }
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Whatever_is_physical_gets_an_answer_without_nan_and_every_check_one_verdict(string id)
    {
        var c = CalculationList.Find(id)!;
        Samples.Of(c).Sample(arguments =>
        {
            var outcome = c.Run(arguments, true);
            Assert.All(outcome.Outputs, o => Assert.True(!o.IsNumber || double.IsFinite(o.Number)));
            Assert.Equal(c.About.Checks.Select(k => k.Id), outcome.Findings.Select(f => f.Check));
            Assert.All(outcome.Findings, f => Assert.True(f.Text.Length > 0 && double.IsFinite(f.Value ?? 0) && double.IsFinite(f.Limit ?? 0)));
            Assert.All(outcome.Working, l => Assert.True(double.IsFinite(l.Value) && Units.Find(l.Unit) is not null, l.Unit));
            Assert.All(outcome.Curves, p => Assert.All(p.X.Concat(p.Y), v => Assert.True(double.IsFinite(v))));
            Assert.DoesNotContain("NaN", Json.Text(ResultJson.Of(c, outcome)));
        }, iter: 300);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Missing_inputs_give_unknown_and_name_what_to_measure(string id)
    {
        var c = CalculationList.Find(id)!;
        var outcome = c.Run(new Value[c.InputSpecs.Count], false);
        Assert.Equal(c.InputSpecs.Select(i => (i.Name, i.About.Measure)), outcome.Missing.Select(m => (m.Input, m.Measure)));
        Assert.All(outcome.Outputs, o => Assert.True(o.IsAbsent));
        Assert.All(outcome.Findings, f => Assert.Equal(Verdict.Unknown, f.Verdict));
        var needed = c.InputSpecs.First(i => !i.Optional);
        Assert.All(outcome.Findings, f => Assert.Contains(needed.About.Meaning, f.Text));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Working_is_written_only_when_it_is_looked_at(string id)
    {
        var c = CalculationList.Find(id)!;
        var faults = new Faults();
        var bytes = System.Text.Encoding.UTF8.GetBytes(CatalogueJson.InputOf(c.About.Examples[0]).ToJsonString());
        var arguments = ArgumentReader.Read(c, bytes, faults)!;
        Outcome shown = c.Run(arguments, true), hidden = c.Run(arguments, false);
        Assert.NotEmpty(shown.Working);
        Assert.Empty(hidden.Working);
        Assert.Equal(shown.Outputs, hidden.Outputs);
        Assert.Equal(shown.Findings, hidden.Findings);
    }

    /// <summary>The first example that gives the output; one that states the input, where there is one.</summary>
    private static Example ExampleFor(Calculation c, Trend trend) => c.About.Examples
        .Where(e => Door.Run(c, CatalogueJson.InputOf(e).ToJsonString()).Number(trend.Output) is not null)
        .OrderByDescending(e => e.Inputs.ContainsKey(trend.Input)).First();

    /// <summary>The inputs with one set to a number in its own unit; of a map every member.</summary>
    private static JsonObject With(JsonObject inputs, InputSpec spec, double x)
    {
        var text = $"{x:R} {spec.Unit!.Code}";
        var copy = inputs.DeepClone().AsObject();
        if (spec.Form == Form.Members)
            foreach (var name in copy[spec.Name]!.AsObject().Select(m => m.Key).ToList()) copy[spec.Name]![name] = text;
        else copy[spec.Name] = text;
        return copy;
    }

    private static double Within(double? expected) => 1e-9 * Math.Abs(expected ?? 1) + 1e-300;

    [GeneratedRegex(@"^[a-z][a-z0-9]*(-[a-z0-9]+)*(\.[a-z][a-z0-9]*(-[a-z0-9]+)*)+$")]
    private static partial Regex DottedKebab();

    [GeneratedRegex("^[a-z][a-z0-9]*(-[a-z0-9]+)*$")]
    private static partial Regex Kebab();

    [GeneratedRegex("^[a-z][A-Za-z0-9]*$")]
    private static partial Regex Camel();
}
