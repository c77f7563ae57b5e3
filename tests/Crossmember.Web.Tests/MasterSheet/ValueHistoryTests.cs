using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;

namespace Crossmember.Web.Tests.MasterSheet;

/// <summary>Everything that was ever said of one value.</summary>
public sealed class ValueHistoryTests : SheetPages
{
    private static readonly Speaker s_ana = new("Ana", "here");

    private void Keep(Fact fact) => Assert.IsType<AppendOutcome.Appended>(Desk.Append([fact], Arrival.Online)[0]);

    private static string? Typed(Stated? stated) => stated is null ? null : stated.Value.IsAbsent ? "" : stated.Typed;

    private IEnumerable<(string?, string?)> Turns(string key, string place) => Said(key).Where(w => w.Place == place).Select(w => (Typed(w.Old), Typed(w.New)));

    [Fact]
    public void Body_note_correction_and_taking_back_stand_newest_first_with_old_and_new()
    {
        const string place = "slots/engine/options/as-found";
        Ben("engine", "engine.redline", "3300 rpm");
        var note = View.Entries[^1].Fact;
        Keep(Desk.Stating.PutRight(note, Stating.Noted("3400 rpm", Basis.Vendor, "50 rpm"), View.Seen(note.Subject), s_ana));
        Keep(Desk.Stating.Undo(note, View.Seen(note.Subject), s_ana));
        Assert.Equal([("3400 rpm", "3200 rpm"), ("3300 rpm", "3400 rpm"), ("3200 rpm", "3300 rpm"), (null, "3200 rpm")], Turns("engine.redline", place).Select(t => (t.Item1, t.Item2 ?? "3200 rpm")));
        Assert.Null(Said("engine.redline")[0].New);
        Assert.Equal(Basis.Vendor, Said("engine.redline")[1].New!.Basis);
    }

    [Fact]
    public void A_new_body_that_says_the_same_of_it_is_no_news()
    {
        var body = View.Entries.Last(e => e.Fact.Subject == "slots/engine/options/as-found").Fact.Payload!.DeepClone().AsObject();
        body["title"] = "Six-cylinder, cleaned";
        Keep(Desk.Stating.State("bracken", "engine", "as-found", body, View.Seen("slots/engine/options/as-found"), s_ana));
        Assert.Single(Said("engine.redline"));
        var changed = body.DeepClone().AsObject();
        changed["parameters"]!["engine.redline"]!["value"] = "3000 rpm";
        Keep(Desk.Stating.State("bracken", "engine", "as-found", changed, View.Seen("slots/engine/options/as-found"), s_ana));
        Assert.Equal([("3200 rpm", "3000 rpm"), (null, "3200 rpm")], Turns("engine.redline", "slots/engine/options/as-found"));
    }

    [Fact]
    public void What_was_tried_stands_there_too_and_a_star_covers_its_keys()
    {
        Keep(Desk.Deciding.TryOut("bracken", "working", "axle.*.ratio", "4.56", View.Seen("scenarios/working/what-ifs/axle.*.ratio"), "Ana", "here"));
        Keep(Desk.Deciding.TryOut("bracken", "working", "axle.*.ratio", null, View.Seen("scenarios/working/what-ifs/axle.*.ratio"), "Ana", "here"));
        Assert.Equal([("4.56", ""), (null, "4.56")], Turns("axle.rear.ratio", "scenarios/working"));
        Assert.Equal(["slots/final-drives/options/as-found", "slots/final-drives/options/short", "slots/final-drives/options/tall"], Said("axle.rear.ratio").Where(w => w.As == SaidAs.Option).Select(w => w.Place).Order());
    }

    [Fact]
    public void A_key_that_nobody_knows_has_no_history() => Assert.Empty(Said("axle.rear.color"));

    [Fact]
    public void The_page_shows_person_time_old_and_new()
    {
        Ben("engine", "engine.redline", "3300 rpm");
        var page = Page("engine");
        page.Find("[data-key-name='engine.redline'] .acts button").Click();
        var rows = page.FindAll(".of-value li");
        Assert.Equal(2, rows.Count);
        Assert.Contains("Ben noted 3200 rpm → 3300 rpm measured on Engine: Six-cylinder", Text(rows[0]), StringComparison.Ordinal);
        Assert.Contains("The file stated with the option nothing → 3200 rpm published", Text(rows[1]), StringComparison.Ordinal);
        Assert.All(rows, r => Assert.NotNull(r.QuerySelector("time[datetime]")));
    }
}
