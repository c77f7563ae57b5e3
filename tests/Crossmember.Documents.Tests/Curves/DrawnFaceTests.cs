using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Curves;

/// <summary>No picture may depend on the fonts of the machine: what is drawn must be in the face that the program brings.</summary>
public sealed class DrawnFaceTests
{
    [Fact]
    public void Every_unit_can_be_printed() => Assert.All(Units.All.Select(Display.Symbol), s => Assert.True(DrawnFace.Has(s), s));

    [Theory]
    [InlineData("µm", "μm")]
    [InlineData("in⁴", "in^4")]
    [InlineData("lbf·ft", "lbf·ft")]
    public void Signs_that_the_face_lacks_are_written_otherwise(string symbol, string printed) => Assert.Equal(printed, DrawnFace.Printable(symbol));

    [Fact]
    public void A_sign_that_no_unit_needs_is_known_to_be_missing() => Assert.False(DrawnFace.Has("漢"));

    [Fact]
    public void A_long_name_leaves_room_for_the_curves()
    {
        Assert.Equal("as found", Plain.Short("as found"));
        var shortened = Plain.Short("the customer's second wish, with everything he saw");
        Assert.True(shortened.Length <= 26 && shortened.EndsWith('…'), shortened);
        Assert.True(DrawnFace.Has("…"));
    }
}
