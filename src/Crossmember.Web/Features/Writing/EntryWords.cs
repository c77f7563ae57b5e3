using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features.Writing;

/// <summary>Tells entries of deciding as sentences: who reads the history should not need the journal's own terms.</summary>
public static class EntryWords
{
    private static readonly HashSet<string> s_deciding =
    [
        EntryKind.ScenarioOpened.Name, EntryKind.ScenarioDropped.Name, EntryKind.ChoiceMade.Name, EntryKind.WhatIfSet.Name, EntryKind.ScenarioApproved.Name, EntryKind.PhaseEntered.Name,
        EntryKind.BuildArchived.Name,
    ];

    public static bool IsDeciding(Fact fact) => s_deciding.Contains(fact.Kind);

    /// <param name="find">An earlier fact of the build by its id.</param>
    public static string Say(Fact fact, Build build, Func<Guid, Fact?> find) => Telling.Say(fact, f => Plain(f, build), find);

    /// <summary>A fact that corrects nothing, as a sentence.</summary>
    public static string Plain(Fact fact, Build build)
    {
        var parts = fact.Subject.Split('/');
        return fact.Kind switch
        {
            "choice.made" => Choice(build, parts, fact.Payload),
            "what-if.set" => Tried(build, parts, fact.Payload),
            "scenario.opened" => $"opened the {Words.WhatIf} “{Text(fact.Payload, "title") ?? parts[1]}”{(Text(fact.Payload, "base") is { } b ? $" over {Words.Scenario(b, build)}" : "")}",
            "scenario.dropped" => $"gave up the {Words.WhatIf} “{parts[1]}”",
            "scenario.approved" => $"approved “{Words.Scenario(Text(fact.Payload, "scenario") ?? "", build)}”{(Text(fact.Payload, "by") is { Length: > 0 } by ? $"; {by} said yes{(Text(fact.Payload, "how") is { } how ? $" {how}" : "")}" : "")}",
            "phase.entered" => $"moved the vehicle to {Text(fact.Payload, "phase")}",
            "build.archived" => fact.Payload?["archived"]?.GetValueKind() == System.Text.Json.JsonValueKind.False ? "took the build out again" : "put the build away",
            "customer.recorded" => "wrote down whose vehicle it is",
            "customer.erased" => "had the customer's data erased",
            "build.opened" => $"said what vehicle it is: “{Text(fact.Payload, "title") ?? build.Title}”{(fact.Payload?["sets"]?["condition"] is JsonArray { Count: > 0 } loads ? $", looked at {string.Join(", ", loads.Select(l => l?.ToString()))}" : "")}",
            "slot.defined" => $"named the item “{Text(fact.Payload, "title") ?? parts[1]}”",
            "slot.graded" => $"graded {Item(build, parts[1])}{(Text(fact.Payload, "grade") is { } grade ? $": {grade}" : "")}",
            "option.stated" => $"stated “{Text(fact.Payload, "title") ?? OptionOf(build, parts[1], parts[3])}” for {Item(build, parts[1])}",
            "value.noted" => $"noted {Value(fact.Payload)} for {Meant(parts[5])} on {Item(build, parts[1])}",
            "condition.stated" => $"said who and what is aboard when {parts[1]}",
            "weighing.taken" => $"weighed the vehicle on {parts[1]}",
            "stock.listed" => $"listed “{Text(fact.Payload, "title") ?? parts[1]}” in the shop's prices",
            "note.written" => $"wrote of {Item(build, parts[1])}: {Text(fact.Payload, "text")}",
            _ => $"{EntryKind.Find(fact.Kind)?.Says ?? fact.Kind} ({fact.Subject})",
        };
    }

    private static string Choice(Build build, string[] parts, JsonNode? payload)
    {
        var slot = build.Find(parts[3]);
        var item = slot?.Title ?? parts[3];
        var where = Words.Scenario(parts[1], build);
        return Text(payload, "option") is not { } option ? $"went back to the base for {item}, in {where}"
            : option == Option.None ? $"left {item} off, in {where}"
            : $"chose “{(slot is null ? option : Words.OptionTitle(slot, option))}” for {item}, in {where}";
    }

    private static string Item(Build build, string slot) => build.Find(slot)?.Title ?? slot;

    private static string OptionOf(Build build, string slot, string option) => build.Find(slot) is { } found ? Words.OptionTitle(found, option) : option;

    private static string Value(JsonNode? payload) => payload?["value"] switch
    {
        null => "that nothing is known",
        JsonValue v when v.TryGetValue<string>(out var text) => text,
        JsonArray curve => $"a curve of {curve.Count} points",
        var other => other.ToJsonString(),
    };

    private static string Tried(Build build, string[] parts, JsonNode? payload) =>
        payload?["value"] is { } value ? $"tried {(value is JsonValue v && v.TryGetValue<string>(out var text) ? text : value.ToJsonString())} for {Meant(parts[3])}, in {Words.Scenario(parts[1], build)}"
            : $"dropped the tried value of {Meant(parts[3])}, in {Words.Scenario(parts[1], build)}";

    /// <summary>A key by what it means, with the places that it names; one that no table knows stands for itself.</summary>
    private static string Meant(string key) => ParameterTable.Shipped.Of(key) is not { } pattern ? key
        : string.Join(' ', ParameterTable.MembersOf(pattern, key).Select(m => m.Member).Prepend($"“{pattern.Meaning}”"));

    private static string? Text(JsonNode? payload, string key) => payload?[key] is JsonValue v && v.TryGetValue<string>(out var text) ? text : null;
}
