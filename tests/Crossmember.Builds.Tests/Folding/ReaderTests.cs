using System.Text.Json;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>The forms that the design leaves open, as docs/formats/build-1.md settles them.</summary>
public sealed class ReaderTests
{
    [Theory]
    [InlineData("""["gear.1","gear.2"]""", "gear.1 gear.2")]
    [InlineData("""["gear=1"]""", "gear.1")]
    [InlineData("""["gear.*"]""", "gear.*")]
    [InlineData("""["range"]""", "range.*")]
    [InlineData("""["gearbox.3.ratio"]""", "gear.3")]
    [InlineData("""["winch.front","winch.front"]""", "winch.front")]
    [InlineData("""{"gear":["1","2"],"winch":"rear"}""", "gear.1 gear.2 winch.rear")]
    [InlineData("[]", "")]
    public void Governs_may_be_written_in_these_forms(string json, string members)
    {
        var (read, faults) = Governs(json);
        Assert.Empty(faults.List);
        Assert.Equal(members, string.Join(' ', read.Select(m => $"{m.Set}.{m.Member}")));
    }

    [Theory]
    [InlineData("""["axle.front"]""", "/g/0")]
    [InlineData("""["gear.4th!"]""", "/g/0")]
    [InlineData("""["gear.1",7]""", "/g/1")]
    [InlineData("""["engine.redline"]""", "/g/0")]
    [InlineData("""{"door":["1"]}""", "/g/door")]
    [InlineData("\"gear.1\"", "/g")]
    public void Governs_refuses_what_names_no_member_that_a_choice_can_bring(string json, string place) =>
        Assert.Equal(place, Assert.Single(Governs(json).Faults.List).Path);

    [Fact]
    public void A_weighing_by_wheels_is_the_same_nested_and_flat()
    {
        var nested = Weighing("""{"date":"2026-01-10","wheels":{"front":{"left":"426 kg","right":"424 kg"}},"wheelbase":"100 in"}""", out var none);
        var flat = Weighing("""{"date":"2026-01-10","wheels":{"front.left":"426 kg","front.right":"424 kg"},"wheelbase":"2.54 m"}""", out _);
        Assert.Empty(none.List);
        Assert.Equal(flat!.Readings, nested!.Readings);
        // 1 in = 25.4 mm exactly (international inch of 1959).
        Assert.Equal(flat.Wheelbase, nested.Wheelbase, 1e-12);
        Assert.True(nested.ByWheel);
    }

    [Theory]
    [InlineData("""{"date":"2026-01-10","wheelbase":"2 m"}""", "/w")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"},"wheels":{"front":"1 kg"},"wheelbase":"2 m"}""", "/w")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"-1 kg"},"wheelbase":"2 m"}""", "/w/axles/front")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 m"},"wheelbase":"2 m"}""", "/w/axles/front")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"}}""", "/w/wheelbase")]
    [InlineData("""{"date":"2026-02-30","axles":{"front":"1 kg"},"wheelbase":"2 m"}""", "/w/date")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"},"wheelbase":"2 m","readingError":"1 m"}""", "/w/readingError")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"},"wheelbase":"2 m","raised":{"lifted":"left","by":"1 m","reading":"1 kg","wheelRadius":{"front":"1 m","rear":"1 m"}}}""", "/w/raised/lifted")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"},"wheelbase":"2 m","raised":{"lifted":"rear","by":"0 m","reading":"1 kg","wheelRadius":{"front":"1 m","rear":"1 m"}}}""", "/w/raised/by")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"},"wheelbase":"2 m","raised":{"lifted":"rear","by":"1 m","wheelRadius":{"front":"1 m","rear":"1 m"}}}""", "/w/raised/reading")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"},"wheelbase":"2 m","raised":{"lifted":"rear","by":"1 m","reading":"1 kg","wheelRadius":{"front":"1 m"}}}""", "/w/raised/wheelRadius")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"},"wheelbase":"2 m","height":"0.7 m","raised":{"lifted":"rear","by":"1 m","reading":"1 kg","wheelRadius":{"front":"1 m","rear":"1 m"}}}""", "/w/height")]
    [InlineData("""{"date":"2026-01-10","axles":{"front":"1 kg"},"wheelbase":"2 m","onBoard":[{"id":"a","mass":"1 kg"},{"id":"a","mass":"1 kg"}]}""", "/w/onBoard")]
    public void A_weighing_that_cannot_be_is_refused_at_its_place(string json, string place)
    {
        Weighing(json, out var faults);
        Assert.Contains(faults.List, f => f.Path == place);
    }

    private static (IReadOnlyList<Membership> Read, Faults Faults) Governs(string json)
    {
        var faults = new Faults();
        return (GovernsReader.Read(JsonElement.Parse(json), "/g", ParameterTable.Shipped, faults), faults);
    }

    private static Weighing? Weighing(string json, out Faults faults) => WeighingReader.Read(new(JsonElement.Parse(json), "/w", faults = new()));
}
