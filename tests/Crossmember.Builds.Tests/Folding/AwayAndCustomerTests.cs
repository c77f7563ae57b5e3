using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>A build put away and taken out, and the id of the customer's record.</summary>
public sealed class AwayAndCustomerTests
{
    private const string Record = "5b0c1c1e-6f0e-4a5e-9d0a-0d6a4be3a111";

    private static readonly Stating s_stating = new(TimeProvider.System);
    private static readonly Speaker s_by = new("ana", "bench");

    private static (Build Build, int Faults) Fold(params Fact[] facts)
    {
        var state = new StreamFold(Catalogue.Shipped.Table, Lifts.Current).Build("b1", Streams.Stamped(facts));
        return (state.Build, state.Faults.Count);
    }

    private static Fact Recorded(string record) => s_stating.Say("b1", EntryKind.CustomerRecorded, "customer", new JsonObject { ["record"] = record }, null, s_by);

    [Fact]
    public void Away_with_a_reason_out_again_and_taken_back()
    {
        var away = s_stating.Archive("b1", true, "sold", null, s_by);
        Assert.Equal("sold", Fold(away).Build.Archived);
        Assert.Equal("", Fold(s_stating.Archive("b1", true, "", null, s_by)).Build.Archived);
        Assert.Null(Fold(away, s_stating.Archive("b1", false, "", away.Id, s_by)).Build.Archived);
        Assert.Null(Fold(away, s_stating.Undo(away, away.Id, s_by)).Build.Archived);
    }

    [Fact]
    public void A_record_is_named_named_again_and_erased()
    {
        var first = Recorded(Record);
        Assert.Equal(Record, Fold(first).Build.Customer);
        var erased = s_stating.Say("b1", EntryKind.CustomerErased, "customer", new JsonObject(), first.Id, s_by);
        Assert.Null(Fold(first, erased).Build.Customer);
        Assert.Equal(Record, Fold(first, erased, Recorded(Record)).Build.Customer);
    }

    [Theory]
    [InlineData("Quillon Featherby")]
    [InlineData("")]
    [InlineData("{5b0c1c1e-6f0e-4a5e-9d0a-0d6a4be3a111}")]
    public void A_record_that_is_no_random_id_is_a_fault(string record)
    {
        var (build, faults) = Fold(Recorded(record));
        Assert.Equal(1, faults);
        Assert.Null(build.Customer);
    }
}
