using System.Globalization;
using Crossmember.Builds.Journal;
using CsCheck;

namespace Crossmember.Builds.Tests.Journal;

public class InstantsTests
{
    /// <summary>Against the runtime's own reader of the same form.</summary>
    [Fact]
    public void Any_instant_reads_as_the_runtime_reads_it() =>
        Gen.DateTime.Sample(t =>
        {
            var text = Instants.Text(new DateTimeOffset(DateTime.SpecifyKind(t, DateTimeKind.Utc)));
            Assert.Equal(DateTimeOffset.Parse(text, CultureInfo.InvariantCulture), Instants.Read(text));
            Assert.Equal(text, Instants.Text(Instants.Read(text)!.Value));
        });

    [Theory]
    [InlineData("2026-02-29T00:00:00.000Z")]
    [InlineData("2026-13-01T00:00:00.000Z")]
    [InlineData("2026-00-01T00:00:00.000Z")]
    [InlineData("2026-01-00T00:00:00.000Z")]
    [InlineData("0000-01-01T00:00:00.000Z")]
    [InlineData("2026-01-01T24:00:00.000Z")]
    [InlineData("2026-01-01T00:60:00.000Z")]
    [InlineData("2026-01-01T00:00:60.000Z")]
    [InlineData("2026-01-01T00:00:00.0x0Z")]
    [InlineData("2026-01-01 00:00:00.000Z")]
    [InlineData("2026-01-01T00:00:00.000+")]
    [InlineData("2026-01-01T00:00:00Z")]
    [InlineData("2026-01-01T00:00:00.00\u0660Z")]
    public void What_is_not_in_the_form_is_no_instant(string text) => Assert.Null(Instants.Read(text));

    [Fact]
    public void A_leap_day_is_one() => Assert.Equal(29, Instants.Read("2028-02-29T23:59:59.999Z")!.Value.Day);
}
