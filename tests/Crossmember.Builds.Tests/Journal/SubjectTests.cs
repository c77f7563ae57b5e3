using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Journal;

public class SubjectTests
{
    [Theory]
    [InlineData("slots/tires", "slots/tires", true)]
    [InlineData("slots/tires", "slots/tires/grade", true)]
    [InlineData("slots/tires/grade", "slots/tires", true)]
    [InlineData("slots/tires", "slots/tires2", false)]
    [InlineData("slots/tires/grade", "slots/tires/notes", false)]
    [InlineData("slots/axle", "slots/axle.front", false)]
    public void Subjects_meet_along_a_path_only(string a, string b, bool meet) => Assert.Equal(meet, Subject.Meet(a, b));

    [Fact]
    public void What_lies_above_is_every_shorter_path() => Assert.Equal(["a/b", "a"], Subject.Above("a/b/c"));

    [Theory]
    [InlineData("slots/axle.front.final-drive/grade", "slots/{slot}/grade", true)]
    [InlineData("slots/Tires/grade", "slots/{slot}/grade", false)]
    [InlineData("slots//grade", "slots/{slot}/grade", false)]
    [InlineData("slots/tires", "slots/{slot}/grade", false)]
    [InlineData("slots/tires/grade/x", "slots/{slot}/grade", false)]
    [InlineData("slots/tires/options/at33/values/wheel.*.*.tire.size", "slots/{slot}/options/{option}/values/{key}", true)]
    [InlineData("weighings/2026-01-31", "weighings/{date}", true)]
    [InlineData("weighings/2026-02-30", "weighings/{date}", false)]
    [InlineData("trades/panel beater", "trades/{trade}", true)]
    [InlineData("trades/ welder", "trades/{trade}", false)]
    [InlineData("build", "build", true)]
    public void A_subject_has_the_shape_of_its_kind(string subject, string shape, bool fits) => Assert.Equal(fits, Subject.Fits(subject, shape));
}
