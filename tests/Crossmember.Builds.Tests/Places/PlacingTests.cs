using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Places;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Tests.Places;

/// <summary>Where items are put for drawing, and how that is known.</summary>
public sealed class PlacingTests
{
    private static readonly VehicleSize s_size = new(new(3, true), new(0.8, true), new(1.5, true), new(0.5, false));

    private static Slot Item(string id, string? parent, params Option[] options) => new() { Id = id, Parent = parent, Title = id, Options = options.Length > 0 ? [.. options] : [new() { Id = Option.AsFound }] };

    private static Option With(string id, OptionClass what, params MassItem[] masses) => new() { Id = id, Class = what, Masses = masses.Length > 0 ? [.. masses] : null };

    private static MassItem Mass(double? kilograms, double x, double y, double z) => new("m", kilograms, new(x, y, z), Basis.Measured);

    private static PlacedItem Placed(string id, Build build, params (string Slot, string Option)[] choices)
    {
        var plan = new EvaluationPlan(Catalogue.Shipped, build);
        var sheet = plan.Evaluate(build, new(), "tried", choices.ToDictionary(c => c.Slot, c => c.Option));
        return Placing.Of(sheet, s_size).Single(p => p.Item.Id == id);
    }

    private static Build Vehicle(params Slot[] slots) => new() { Id = "b", Slots = [Item(Slot.Root, null), .. slots] };

    /// <summary>30 kg at 1 m and 10 kg at 3 m balance at (30 + 30) / 40 = 1.5 m.</summary>
    [Fact]
    public void An_item_lies_at_the_center_of_its_masses()
    {
        var at = Placed("seat", Vehicle(Item("seat", Slot.Root, With(Option.AsFound, OptionClass.Keep, Mass(30, 1, 0, 0), Mass(10, 3, 0.4, 0.8))))).At!.Value;
        Assert.Equal((1.5, 0.1, 0.2), (at.X, Math.Round(at.Y, 12), Math.Round(at.Z, 12)));
    }

    [Fact]
    public void Masses_that_nobody_weighed_count_alike() => Assert.Equal(2, Placing.Center([Mass(null, 1, 0, 0), Mass(null, 3, 0, 0)])!.Value.X);

    [Fact]
    public void An_option_without_a_place_lies_where_the_item_was_found()
    {
        var build = Vehicle(Item("seat", Slot.Root, With(Option.AsFound, OptionClass.Keep, Mass(30, 1, 0.2, 0)), With("new", OptionClass.Replace)));
        var placed = Placed("seat", build, ("seat", "new"));
        Assert.Equal((PlacedBy.MassesAsFound, 1), (placed.By, placed.At!.Value.X));
    }

    [Fact]
    public void What_has_a_usual_place_is_put_there_and_said_to_be_no_measurement()
    {
        var placed = Placed("gearbox", Vehicle(Item("gearbox", Slot.Root)));
        Assert.Equal((PlacedBy.Usual, 0.93), (placed.By, Math.Round(placed.At!.Value.X, 9)));
        Assert.Contains("not a measurement", placed.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void What_has_none_goes_with_its_parent()
    {
        var placed = Placed("gearbox.zither", Vehicle(Item("gearbox", Slot.Root, With(Option.AsFound, OptionClass.Keep, Mass(60, 1, 0, 0))), Item("gearbox.zither", "gearbox") with { Title = "Zither" }));
        Assert.Equal((PlacedBy.Parent, 1), (placed.By, placed.At!.Value.X));
    }

    [Theory]
    [InlineData("zither", "as-found", "nobody has said")]
    [InlineData("winch", "none", "left off")]
    [InlineData("winch", "as-found", "nothing is there")]
    [InlineData("vehicle", "as-found", "the vehicle itself")]
    public void What_has_no_place_says_why(string id, string option, string why)
    {
        var placed = Placed(id, Vehicle(Item("zither", Slot.Root), Item("winch", Slot.Root, With(Option.AsFound, OptionClass.None))), (id, option));
        Assert.False(placed.IsPlaced);
        Assert.Contains(why, placed.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("engine.fuel", "Carburettor", "fuel")]
    [InlineData("axle.rear.brakes", "Rear drums", "axle.rear.brakes")]
    [InlineData("a7", "Old radiator, three rows", "radiator")]
    [InlineData("a8", "Something else", null)]
    public void A_usual_place_is_found_by_id_then_by_words(string id, string title, string? found) => Assert.Equal(found, ItemPlaces.Of(new() { Id = id, Title = title })?.Item);

    [Fact]
    public void Usual_places_are_named_once_and_lie_on_the_vehicle()
    {
        Assert.Equal(ItemPlaces.All.Count, ItemPlaces.All.Select(p => p.Item).Distinct().Count());
        Assert.All(ItemPlaces.All, p => Assert.True(p is { Along: >= -0.27 and <= 1.42, Across: >= -1 and <= 1, Height: >= -0.17 and <= 0.56 }, p.ToString()));
    }

    /// <summary>Nothing known: 110 in of wheelbase and shares of it, all of them said to be assumed.</summary>
    [Fact]
    public void A_vehicle_of_which_nothing_is_known_is_drawn_from_assumptions()
    {
        var build = Vehicle();
        var size = VehicleSize.Of(new EvaluationPlan(Catalogue.Shipped, build).Evaluate(build, new(), null));
        Assert.Equal(110 * 0.0254, size.Wheelbase.Meters, 9);
        Assert.DoesNotContain(true, new[] { size.Wheelbase.Known, size.TireDiameter.Known, size.Track.Known, size.DatumHeight.Known });
    }
}
