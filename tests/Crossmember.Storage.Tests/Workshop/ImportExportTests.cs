using System.Security.Cryptography;
using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Storage.Tests.Workshop;

public sealed class ImportExportTests
{
    [Fact]
    public void The_same_sheet_twice_changes_nothing()
    {
        using var s = new ShopWithABuild();
        var head = s.Shelf.Store.Head("hauler");
        var again = s.Import(ShopWithABuild.Json);
        Assert.Equal(("hauler", 0), (again.Id, again.Appended));
        Assert.Equal(head.Hash.ToArray(), s.Shelf.Store.Head("hauler").Hash.ToArray());
        Assert.Equal(["hauler", "shop"], s.Shelf.Store.Streams());
    }

    [Fact]
    public void A_changed_sheet_is_another_build()
    {
        using var s = new ShopWithABuild();
        var changed = ShopWithABuild.Json.Replace("4.88", "4.56", StringComparison.Ordinal);
        Assert.Equal("hauler-2", s.Import(changed).Id);
        Assert.Equal(("hauler-2", 0), (s.Import(changed).Id, s.Import(changed).Appended));
        Assert.Equal("spare", s.Import(ShopWithABuild.Json, "spare").Id);
        Assert.Equal(4.56, s.Open("hauler-2").Build.Find("axle.rear")!.Find("deep")!.Parameters[0].Value.Value.Number);
    }

    [Fact]
    public void Work_done_since_does_not_make_the_sheet_a_stranger()
    {
        using var s = new ShopWithABuild();
        s.Say("choice.made", "scenarios/tall/choices/axle.rear", new JsonObject { ["option"] = "deep" });
        Assert.Equal(("hauler", 0), (s.Import(ShopWithABuild.Json).Id, s.Import(ShopWithABuild.Json).Appended));
    }

    [Fact]
    public void Export_import_export_gives_the_same_bytes()
    {
        using var s = new ShopWithABuild();
        s.Say("choice.made", "scenarios/tall/choices/axle.rear", new JsonObject { ["option"] = "deep" });
        s.Say("note.written", "slots/tires/notes", new JsonObject { ["text"] = "sidewall cracked, \"left\" rear — 3/16 deep" });
        var first = s.Export();
        using var other = new ShopWithABuild(empty: true);
        Assert.Equal("hauler", other.Import(first).Id);
        Assert.Equal(first, other.Export());
        Assert.Equal(0, other.Import(first).Appended);
    }

    [Fact]
    public void Attachments_travel_in_the_zip_and_come_back_the_same()
    {
        using var s = new ShopWithABuild();
        byte[] photo = [.. Enumerable.Range(0, 5000).Select(i => (byte)(i * 7))];
        var hash = s.Shop.Store.Attachments.Keep(new MemoryStream(photo), "image/jpeg", "left rail.jpg", new())!;
        s.Say("photo.taken", "slots/tires/photos", new JsonObject { ["attachment"] = hash });
        var zip = s.Export();
        Assert.Equal("PK"u8.ToArray(), zip[..2]);
        using var other = new ShopWithABuild(empty: true);
        other.Import(zip);
        using var back = other.Shop.Store.Attachments.Open(hash, new())!;
        Assert.Equal(hash, Convert.ToHexStringLower(SHA256.HashData(back)));
        Assert.Equal(zip, other.Export());
    }

    [Fact]
    public void Only_a_true_extension_of_a_journal_is_taken_in()
    {
        using var s = new ShopWithABuild();
        var early = s.Export();
        using var other = new ShopWithABuild(empty: true);
        other.Import(early);
        s.Say("choice.made", "scenarios/tall/choices/axle.rear", new JsonObject { ["option"] = "deep" });
        var later = s.Export();
        Assert.Equal(1, other.Import(later).Appended);
        Assert.Equal(0, other.Import(early).Appended);
        // A copy that went its own way is refused at the first entry that differs.
        using var third = new ShopWithABuild(empty: true);
        third.Import(early);
        third.Say("choice.made", "scenarios/tall/choices/axle.rear", new JsonObject { ["option"] = "none" });
        var faults = new Faults();
        var file = Builds.Files.BuildFile.Read(later, Builds.Evaluation.Catalogue.Shipped, faults)!;
        Assert.Null(third.Shop.Importing().Import(file, null, faults));
        Assert.Contains(faults.List, f => f.Wrong.Contains("differ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_shops_own_word_stands()
    {
        using var s = new ShopWithABuild();
        var other = ShopWithABuild.Json.Replace("\"hauler\"", "\"second\"", StringComparison.Ordinal).Replace("95.00", "120.00", StringComparison.Ordinal);
        Assert.Contains(s.Import(other).Remarks, r => r.Contains("trades/technician", StringComparison.Ordinal));
        Assert.Equal(95, s.Shelf.Shop().Rates["technician"]!.Value.Amount);
    }

    [Fact]
    public void Prices_in_another_currency_are_refused_before_anything_is_written()
    {
        using var s = new ShopWithABuild();
        var faults = new Faults();
        var json = ShopWithABuild.Json.Replace("\"hauler\"", "\"second\"", StringComparison.Ordinal).Replace("USD", "CAD", StringComparison.Ordinal);
        var file = Builds.Files.BuildFile.Read(System.Text.Encoding.UTF8.GetBytes(json), Builds.Evaluation.Catalogue.Shipped, faults)!;
        Assert.Null(s.Shop.Importing().Import(file, null, faults));
        Assert.Equal(["hauler", "shop"], s.Shelf.Store.Streams());
    }

    [Fact]
    public void An_old_build_opens_from_its_snapshot_as_from_its_whole_journal()
    {
        using var s = new ShopWithABuild();
        for (var i = 0; i < 600; i++) s.Say("hours.logged", "slots/tires/hours", new JsonObject { ["trade"] = "technician", ["hours"] = 1 });
        s.Say("choice.made", "scenarios/tall/choices/axle.rear", new JsonObject { ["option"] = "deep" });
        Assert.NotNull(s.Open());
        Assert.NotNull(s.Shop.Store.Snapshots.Latest("hauler", long.MaxValue, Builds.Folding.BuildFold.Version));
        s.Say("choice.made", "scenarios/tall/choices/tires", new JsonObject { ["option"] = null });
        var fresh = new Builds.Workshop.BuildLibrary(s.Shelf.Store, s.Shop.Store.Snapshots, Builds.Evaluation.Catalogue.Shipped).Open("hauler")!;
        var whole = new Builds.Folding.StreamFold(Builds.Evaluation.Catalogue.Shipped.Table, Lifts.Current).Build("hauler", s.Shelf.Store.Read("hauler"));
        Assert.Equal(Text(whole.Build), Text(fresh.Build));
    }

    private static string Text(Builds.Slots.Build build) => Builds.Files.SheetJson.Of(
        new Builds.Evaluation.EvaluationPlan(Builds.Evaluation.Catalogue.Shipped, build).Evaluate(build, new(), build.Scenarios["tall"]), (build.Position, 0)).ToJsonString();
}
