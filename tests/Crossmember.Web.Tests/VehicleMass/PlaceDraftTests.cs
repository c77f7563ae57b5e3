using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.VehicleMass;

namespace Crossmember.Web.Tests.VehicleMass;

/// <summary>A place as somebody types it, and as it is kept.</summary>
public sealed class PlaceDraftTests
{
    private static readonly Place s_at = new(1.5748, -0.4064, 0.8636); // 62, -16, 34 in, exactly

    [Fact]
    public void What_nobody_touched_is_kept_exactly_in_either_measure()
    {
        Assert.Equal(["62 in", "-16 in", "34 in"], new PlaceDraft(s_at, MeasureSystem.UsCustomary).Said());
        Assert.Equal(["1574.8 mm", "-406.4 mm", "863.6 mm"], new PlaceDraft(s_at, MeasureSystem.Metric).Said());
        // A third of a meter is no round number of either: it is told rounded, and read as it was.
        var odd = new PlaceDraft(new(1 / 3.0, 0, 0), MeasureSystem.UsCustomary);
        Assert.Equal(("13.12 in", 1 / 3.0, "333.33 mm"), (odd.Typed[0], odd.Read()!.Value.X, odd.Said()[0]));
    }

    [Theory]
    [InlineData("62", MeasureSystem.UsCustomary, 1.5748)]
    [InlineData("62", MeasureSystem.Metric, 0.062)]
    [InlineData("-3-1/2", MeasureSystem.UsCustomary, -0.0889)]
    [InlineData("5 ft 2 in", MeasureSystem.Metric, 1.5748)]
    [InlineData("1.5 m", MeasureSystem.UsCustomary, 1.5)]
    public void A_bare_number_is_in_the_unit_of_the_reader(string typed, MeasureSystem measure, double meters)
    {
        var draft = new PlaceDraft(s_at, measure);
        draft.Typed[0] = typed;
        Assert.Equal(meters, draft.Read()!.Value.X, 12);
        Assert.Equal(s_at.Y, draft.Read()!.Value.Y);
        Assert.True(draft.IsChanged);
    }

    [Fact]
    public void Each_field_that_cannot_be_read_is_named()
    {
        var (draft, faults) = (new PlaceDraft(null, MeasureSystem.UsCustomary), new Faults());
        draft.Typed[1] = "left";
        Assert.Null(draft.Read(faults));
        Assert.Equal(["x", "y", "z"], faults.List.Select(f => f.Path));
    }

    [Fact]
    public void A_view_sets_the_two_lengths_that_it_shows()
    {
        var draft = new PlaceDraft(s_at, MeasureSystem.Metric);
        draft.Set(DrawnView.Side, 2.003, 0.497);
        Assert.Equal(["2000 mm", "-406.4 mm", "500 mm"], draft.Typed);
        draft.Set(DrawnView.Plan, 1, 0.123);
        Assert.Equal(["1000 mm", "120 mm", "500 mm"], draft.Typed);
        draft.Reset();
        Assert.False(draft.IsChanged);
    }

    [Fact]
    public void Words_of_the_drawing_are_read()
    {
        Assert.Equal(new DrawingWord(DrawnAct.Drag, DrawnView.Plan, "conditions/c/a", 1.25, -0.5), DrawingWord.Read("drag|plan|conditions/c/a|1.25|-0.5"));
        Assert.Equal(DrawnAct.Drop, DrawingWord.Read("drop|side|k|0|0")!.Act);
        Assert.Equal(new DrawingWord(DrawnAct.Nudge, DrawnView.Side, "", -10, 0, 'z'), DrawingWord.Read("nudge|z|-10"));
        foreach (var none in new[] { null, "", "drag", "drag|side|k|1", "drag|side|k|NaN|0", "nudge|x|1000", "nudge|xy|1", "fly|side|k|1|1" }) Assert.Null(DrawingWord.Read(none));
    }

    [Theory]
    [InlineData(1.5748, -0.4064, 0.8636, "62 in behind the front axle, 16 in left of the center line, 34 in over the frame datum")]
    [InlineData(-0.635, 0, -0.0508, "25 in ahead of the front axle, on the center line, 2 in under the frame datum")]
    public void A_place_is_told_in_words(double x, double y, double z, string words) => Assert.Equal(words, MassText.Place(new(x, y, z), MeasureSystem.UsCustomary));
}
