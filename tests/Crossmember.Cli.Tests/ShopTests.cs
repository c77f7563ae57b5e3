namespace Crossmember.Cli.Tests;

public sealed class ShopTests
{
    [Fact]
    public void From_the_demo_to_a_second_shop_nothing_is_lost()
    {
        using Place place = new(), other = new();
        var demo = Path.Combine(place.Folder, "demo");
        Assert.Equal(0, place.Run("demo", "--out", demo).Code);
        var file = Path.Combine(demo, "packhorse.json");
        Assert.Equal("packhorse", (string?)place.Run("import", file, "--json").Json["imported"]![0]!["build"]);
        Assert.Equal(0, (int)place.Run("import", file, "--json").Json["imported"]![0]!["appended"]!);
        string first = Path.Combine(place.Folder, "a.json"), second = Path.Combine(place.Folder, "b.json");
        Assert.Equal(0, place.Run("export", "packhorse", "--out", first).Code);
        Assert.Equal(0, other.Run("import", first).Code);
        Assert.Equal(0, other.Run("export", "packhorse", "--out", second).Code);
        Assert.Equal(File.ReadAllBytes(first), File.ReadAllBytes(second));
        // The file, the store and the exported journal tell one story.
        Assert.Equal(Without(place.Run("check", file, "--json").Json), Without(other.Run("check", "packhorse", "--json").Json));
        Assert.Equal(Without(place.Run("check", file, "--json").Json), Without(place.Run("check", first, "--json").Json));
        Assert.Equal(place.Run("ripple", file, "--from", "asked", "--to", "working", "--json").Out, other.Run("ripple", "packhorse", "--from", "asked", "--to", "working", "--json").Out);
    }

    [Fact]
    public void Stored_builds_tell_their_position_and_files_are_at_zero()
    {
        using var place = new Place();
        place.Run("demo", "--out", place.Folder);
        var file = Path.Combine(place.Folder, "packhorse.json");
        place.Run("import", file);
        Assert.Equal("""{"build":0,"shop":0}""", place.Run("check", file, "--json").Json["position"]!.ToJsonString());
        Assert.True((int)place.Run("check", "packhorse", "--json").Json["position"]!["build"]! > 20);
    }

    [Fact]
    public void One_wrong_file_among_good_ones_is_named_and_the_good_ones_are_in()
    {
        using var place = new Place();
        place.Run("demo", "--out", place.Folder);
        var wrong = place.File("half.json", "{\"format\":\"crossmember.build/1\",");
        var used = place.Run("import", Path.Combine(place.Folder, "packhorse.json"), wrong);
        Assert.Equal(2, used.Code);
        Assert.Contains("half.json: /: not JSON", used.Error, StringComparison.Ordinal);
        Assert.Equal(1, place.Run("check", "packhorse").Code);
    }

    [Fact]
    public void Verify_is_clean_then_names_what_was_altered()
    {
        using var place = new Place();
        place.Run("demo", "--out", place.Folder);
        place.Run("import", Path.Combine(place.Folder, "packhorse.json"));
        var heads = Path.Combine(place.Folder, "heads.json");
        Assert.Equal(0, place.Run("verify", "--heads", heads).Code);
        Assert.Equal(0, place.Run("rebuild").Code);
        using (var db = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={Path.Combine(place.Data, "shop.db")};Pooling=False"))
        {
            db.Open();
            using var command = db.CreateCommand();
            command.CommandText = "SELECT group_concat('DROP TRIGGER ' || name, ';') FROM sqlite_master WHERE type = 'trigger'";
            command.CommandText = (string)command.ExecuteScalar()! + "; UPDATE Entries SET Subject = 'slots/tires/options/at34' WHERE Stream = 'packhorse' AND Subject = 'slots/tires/options/at33'";
            Assert.True(command.ExecuteNonQuery() > 0);
        }
        var used = place.Run("verify", "--heads", heads, "--json");
        Assert.Equal(1, used.Code);
        Assert.Contains(used.Json["problems"]!.AsArray(), p => (string?)p!["item"] == "Subject" && (string?)p["stream"] == "packhorse");
    }

    [Theory]
    [InlineData("check", "nowhere")]
    [InlineData("ripple", "nowhere")]
    [InlineData("export", "nowhere", "--out", "x.json")]
    [InlineData("import", "nowhere.json")]
    public void What_is_not_there_is_a_fault_of_the_caller(params string[] words)
    {
        using var place = new Place();
        var used = place.Run(words);
        Assert.Equal(2, used.Code);
        Assert.StartsWith("nowhere", used.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_that_cannot_be_used_is_the_surroundings_fault()
    {
        using var place = new Place();
        place.Run("demo", "--out", place.Folder);
        File.WriteAllText(place.Data, "in the way");
        Assert.Equal(3, place.Run("import", Path.Combine(place.Folder, "packhorse.json")).Code);
        File.Delete(place.Data);
    }

    private static string Without(System.Text.Json.Nodes.JsonNode check)
    {
        check.AsObject().Remove("position");
        return check.ToJsonString();
    }
}
