using Crossmember.Documents.Vehicle;
using CsCheck;

namespace Crossmember.Documents.Tests.Vehicle;

/// <summary>What must hold of marks wherever the items are.</summary>
public sealed class MarkLayoutTests
{
    private const double Size = 44;

    private static readonly Gen<(double X, double Y)[]> s_places = Gen.Select(Gen.Double[-300, 1200], Gen.Double[-300, 900]).Array[0, 120];

    private static readonly Gen<Area> s_areas = Gen.Select(Gen.Double[0, 50], Gen.Double[0, 400], Gen.Double[Size, 900], Gen.Double[Size, 400]).Select(a => new Area(a.Item1, a.Item2, a.Item3, a.Item4));

    [Fact]
    public void No_mark_overlaps_another() => Gen.Select(s_places, s_areas).Sample((places, area) =>
    {
        var marks = MarkLayout.Of(places, area, Size);
        for (var i = 0; i < marks.Count; i++)
            for (var j = 0; j < i; j++)
                Assert.True(Math.Abs(marks[i].X - marks[j].X) >= Size || Math.Abs(marks[i].Y - marks[j].Y) >= Size, $"{marks[i]} lies on {marks[j]}");
    }, iter: 400);

    [Fact]
    public void No_mark_leaves_the_picture() => Gen.Select(s_places, s_areas).Sample((places, area) =>
    {
        foreach (var mark in MarkLayout.Of(places, area, Size))
        {
            Assert.InRange(mark.X, area.Left + (Size / 2) - 1e-9, area.Left + area.Width - (Size / 2) + 1e-9);
            Assert.InRange(mark.Y, area.Top + (Size / 2) - 1e-9, area.Top + area.Height - (Size / 2) + 1e-9);
        }
    }, iter: 400);

    [Fact]
    public void Every_item_has_one_mark() => Gen.Select(s_places, s_areas).Sample((places, area) =>
        Assert.Equal(Enumerable.Range(0, places.Length), MarkLayout.Of(places, area, Size).SelectMany(m => m.Members).Order()), iter: 400);

    [Fact]
    public void What_stands_alone_stays_at_its_place()
    {
        var marks = MarkLayout.Of([(100, 100), (300, 100)], new(0, 0, 400, 200), Size);
        Assert.Equal([(100.0, 100.0), (300.0, 100.0)], marks.Select(m => (m.X, m.Y)));
    }

    [Fact]
    public void A_second_item_at_one_place_moves_aside_but_stays_within_reach()
    {
        var marks = MarkLayout.Of([(200, 100), (200, 100)], new(0, 0, 400, 200), Size);
        Assert.Equal(2, marks.Count);
        var away = Math.Sqrt(Math.Pow(marks[1].X - 200, 2) + Math.Pow(marks[1].Y - 100, 2));
        Assert.InRange(away, Size, 1.8 * Size);
    }

    [Fact]
    public void Where_no_room_is_left_items_share_a_mark()
    {
        var marks = MarkLayout.Of([(22, 22), (30, 22), (40, 22)], new(0, 0, Size, Size), Size);
        Assert.Equal([0, 1, 2], Assert.Single(marks).Members);
    }
}
