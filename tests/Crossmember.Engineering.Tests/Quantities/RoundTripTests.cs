using System.Globalization;
using System.Text.RegularExpressions;
using Crossmember.Engineering.Quantities;
using CsCheck;

namespace Crossmember.Engineering.Tests.Quantities;

/// <summary>Properties that hold for every unit and every text, whatever a person types.</summary>
public partial class RoundTripTests
{
    private static readonly Gen<Unit> s_units = Gen.Int[0, Units.All.Count - 1].Select(i => Units.All[i]);

    private static readonly Gen<Dimension> s_dimensions = Gen.Int[0, Dimension.All.Count - 1].Select(i => Dimension.All[i]);

    // The characters of the notation, so that random texts come close to being right.
    private static readonly Gen<string> s_nearly = Gen.OneOf(
        Gen.String[Gen.Char["0123456789./-+ '\"eE,±½°²·×ftinlbNmOhkgPaCF%:µΩ\u00A0\u2033"], 0, 24],
        Gen.String[0, 130],
        Gen.Select(Gen.Double, s_units, Gen.Int[0, 3], Gen.Char, (x, u, at, c) =>
            $"{x.ToString("R", CultureInfo.InvariantCulture)} {u.Code}".Insert(at, c.ToString())));

    [Fact]
    public void A_number_written_with_any_code_comes_back() =>
        Gen.Select(Gen.Double[-1e12, 1e12], s_units).Sample((number, unit) =>
        {
            if (unit.Dimension == Dimension.Temperature) number = Math.Abs(number);
            var read = ShopNotation.Read(number.ToString("R", CultureInfo.InvariantCulture) + " " + unit.Code, unit.Dimension);
            return read.Ok && read.Value!.Unit == unit && Math.Abs(read.Value.Si - unit.ToSi(number)) <= 1e-14 * Math.Abs(unit.ToSi(number));
        });

    [Fact]
    public void Every_code_is_read_exactly_as_it_stands() =>
        Assert.All(Units.All, unit => Assert.Equal(unit, ShopNotation.Read("5 " + unit.Code, unit.Dimension).Value?.Unit));

    [Fact]
    public void Public_quantity_types_carry_the_number_there_and_back() =>
        Gen.Select(Gen.Double[1e-6, 1e9], s_dimensions).Sample((si, d) => Math.Abs(d.ToSi(d.FromSi(si)) - si) <= 1e-12 * si);

    [Fact]
    public void No_text_throws_and_every_refusal_names_a_place_and_a_remedy() =>
        Gen.Select(s_nearly, s_dimensions).Sample((text, dimension) => Located(ShopNotation.Read(text, dimension), text), iter: 20_000);

    [Fact]
    public void No_text_throws_as_a_wire_gauge() =>
        Gen.OneOf(s_nearly, Gen.String[Gen.Char["0123456789/AWGawg m2."], 0, 10]).Sample(text =>
        {
            var read = WireGauge.Read(text);
            return read.Ok ? read.Value!.Area.SquareMeters > 0 : Regex.IsMatch(read.Wrong!, @"character \d|nothing is written") && read.WouldBeRight!.Length > 0;
        });

    [Fact]
    public void What_is_shown_can_be_typed_again() =>
        Gen.Select(Gen.Double[1e-4, 1e6], s_dimensions, Gen.Bool).Sample((si, dimension, metric) =>
        {
            var shown = Display.Show(si, dimension, metric ? MeasureSystem.Metric : MeasureSystem.UsCustomary);
            var read = ShopNotation.Read(shown, dimension);
            // Five figures are shown: half of the last one, of the larger number on a scale with an offset.
            var scale = dimension == Dimension.Temperature ? si + 460 : si;
            return read.Ok && Math.Abs(read.Value!.Si - si) <= 5.1e-5 * scale;
        });

    private static bool Located(Parsed<Quantity> read, string text)
    {
        if (read.Ok) return double.IsFinite(read.Value!.Si);
        if (string.IsNullOrWhiteSpace(read.WouldBeRight)) return false;
        if (string.IsNullOrWhiteSpace(text)) return read.Wrong == "nothing is written";
        var place = Place().Match(read.Wrong!);
        return place.Success && int.Parse(place.Groups[1].Value, CultureInfo.InvariantCulture) is >= 1 and var at && at <= text.Length + 1;
    }

    [GeneratedRegex(@"character (\d+)")]
    private static partial Regex Place();
}
