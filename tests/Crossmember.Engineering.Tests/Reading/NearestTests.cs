using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Engineering.Tests.Reading;

public sealed class NearestTests
{
    private static readonly string[] s_known = ["ratio", "rating", "track", "size"];

    [Theory]
    [InlineData("ratoi", "ratio")]
    [InlineData("raiting", "rating")]
    [InlineData("TRACK", "track")]
    [InlineData("sise", "size")]
    public void A_slip_finds_its_word(string typed, string meant) => Assert.Equal(meant, Nearest.To(typed, s_known));

    [Fact]
    public void A_known_word_is_its_own_nearest() => Assert.All(s_known, k => Assert.Equal(k, Nearest.To(k, s_known)));

    [Fact]
    public void Nothing_known_has_no_nearest() => Assert.Null(Nearest.To("ratio", []));

    [Fact]
    public void The_order_of_the_words_does_not_matter() =>
        Gen.String[0, 10].Sample(typed => Assert.Equal(Nearest.To(typed, s_known), Nearest.To(typed, s_known.Reverse())));
}
