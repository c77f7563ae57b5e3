using System.Text.Json.Nodes;
using Crossmember.Builds.Drafting;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Drafting;

/// <summary>Who and what is on board, as a form writes it.</summary>
public sealed class LoadingDraftTests
{
    private static readonly JsonObject s_stated = (JsonObject)JsonNode.Parse("""{"items":[{"id":"driver","mass":"190 lb","at":["62 in","-16 in","34 in"],"basis":"measured"},{"id":"tools","mass":"90 lb"}]}""")!;

    private static string Told(LoadingDraft draft)
    {
        var faults = new Faults();
        var payload = draft.Payload(faults);
        Assert.True(payload is not null, string.Join('\n', faults.List));
        return payload!.ToJsonString();
    }

    private static IReadOnlyList<(string Path, string Wrong)> Faults(params (string Name, string Mass)[] rows)
    {
        var (draft, faults) = (LoadingDraft.Of(null), new Faults());
        foreach (var (name, mass) in rows) draft.Rows.Add(new() { Name = name, Mass = mass });
        Assert.Null(draft.Payload(faults));
        return [.. faults.List.Select(f => (f.Path, f.Wrong))];
    }

    [Fact]
    public void A_new_name_keeps_the_place_and_a_new_mass_the_rest()
    {
        var draft = LoadingDraft.Of(s_stated);
        draft.Rows[0].Name = "Ana";
        draft.Rows[1].Mass = "41 kg";
        Assert.Equal("""{"items":[{"id":"Ana","mass":"190 lb","at":["62 in","-16 in","34 in"],"basis":"measured"},{"id":"tools","mass":"41 kg","basis":"assumed"}]}""", Told(draft));
    }

    [Fact]
    public void A_line_taken_out_is_gone_and_an_empty_one_is_passed_over()
    {
        var draft = LoadingDraft.Of(s_stated);
        draft.Rows.RemoveAt(0);
        draft.Rows.Add(new());
        draft.Rows.Add(new() { Name = " dog ", Mass = "40 lb", Basis = "measured" });
        Assert.Equal("""{"items":[{"id":"tools","mass":"90 lb","basis":"assumed"},{"id":"dog","mass":"40 lb","basis":"measured"}]}""", Told(draft));
    }

    [Fact]
    public void Nobody_is_an_empty_list() => Assert.Equal("""{"items":[]}""", Told(LoadingDraft.Of(null)));

    [Fact]
    public void Faults_name_the_line_and_its_field()
    {
        Assert.Equal([("0/mass", "nothing is written")], Faults(("driver", "")));
        Assert.Equal("0/name", Assert.Single(Faults(("", "190 lb"))).Path);
        Assert.Equal("1/name", Assert.Single(Faults(("driver", "190 lb"), ("driver", "150 lb"))).Path);
        Assert.Equal("0/mass", Assert.Single(Faults(("driver", "190"))).Path);
        Assert.Equal("0/mass", Assert.Single(Faults(("driver", "-5 lb"))).Path);
    }

    [Fact]
    public void What_was_stated_is_not_changed_under_the_hand_of_whoever_else_holds_it()
    {
        var before = s_stated.ToJsonString();
        var draft = LoadingDraft.Of(s_stated);
        draft.Rows[0].Name = "other";
        _ = Told(draft);
        Assert.Equal(before, s_stated.ToJsonString());
    }
}
