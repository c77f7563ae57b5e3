using Crossmember.Builds.Parameters;

namespace Crossmember.Builds.Tests.Parameters;

/// <summary>What must hold of every declared key, whoever adds one.</summary>
public sealed class ParameterTableTests
{
    private static readonly ParameterTable s_table = ParameterTable.Shipped;

    [Fact]
    public void No_two_patterns_could_match_one_key()
    {
        for (var i = 0; i < s_table.All.Count; i++)
            for (var j = 0; j < i; j++)
                Assert.False(ParameterTable.Overlap(s_table.All[i], s_table.All[j]), $"{s_table.All[i]} and {s_table.All[j]}");
    }

    [Fact]
    public void No_pattern_over_a_set_has_a_default() => Assert.DoesNotContain(s_table.All, p => p.Sets.Length > 0 && p.Default is not null);

    /// <summary>A stray comma or quote would shift the columns: then the unit would not be of the dimension, or the meaning would be empty.</summary>
    [Fact]
    public void Every_row_has_nine_cells_and_a_meaning()
    {
        using var resource = new StreamReader(typeof(ParameterTable).Assembly.GetManifestResourceStream("parameters.csv")!);
        foreach (var row in resource.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries))
        {
            Assert.Equal(9, row.Split(',').Length);
            Assert.DoesNotContain('"', row);
        }
        Assert.All(s_table.All, p => Assert.True(p.Meaning.Length > 0 && p.Page.Length > 0 && p.Sets.All(Sets.IsKnown), p.Text));
        Assert.All(s_table.All.Where(p => p.Unit is not null), p => Assert.Equal(p.Dimension, p.Unit!.Dimension));
    }

    [Fact]
    public void The_frozen_keys_are_there() => Assert.All(
        ["axle.rear.ratio", "axle.front.rating", "axle.front.track", "wheel.rear.left.tire.size", "wheel.*.*.tire.load-rating", "gearbox.5.ratio", "transfer.low.ratio", "engine.redline",
         "engine.torque-curve", "vehicle.wheelbase", "vehicle.drag-area", "vehicle.rolling-resistance", "duty.cruise-speed"],
        key => Assert.NotNull(s_table.Of(key)));

    [Theory]
    [InlineData("axle.rear.ration", "axle.rear.ratio")]
    [InlineData("gearbx.3.ratio", "gearbox.3.ratio")]
    [InlineData("engine.red-line", "engine.redline")]
    public void A_misspelt_key_is_told_the_nearest_with_its_own_members(string misspelt, string nearest)
    {
        Assert.Null(s_table.Of(misspelt));
        Assert.Equal(nearest, s_table.NearestTo(misspelt));
    }

    [Theory]
    [InlineData("")]
    [InlineData("axle.Rear.ratio")]
    [InlineData("axle..ratio")]
    [InlineData("axle.rear.ratio.")]
    [InlineData("*.rear.ratio")]
    public void What_is_no_key_is_none(string text) => Assert.Null(s_table.Of(text));
}
