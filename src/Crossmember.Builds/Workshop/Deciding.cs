using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Workshop;

/// <summary>Makes the facts of deciding: who chose what, having seen what.</summary>
public sealed class Deciding(BuildLibrary library, TimeProvider clock)
{
    /// <param name="option">Null goes back to the base.</param>
    /// <param name="seen">The last entry on the subject that the person was looking at.</param>
    public Fact Choose(string build, string scenario, string slot, string? option, Guid? seen, string person, string device) =>
        Make(build, EntryKind.ChoiceMade, $"scenarios/{scenario}/choices/{slot}", new JsonObject { ["option"] = option }, seen, person, device);

    /// <param name="value">As typed; null drops the what-if.</param>
    public Fact TryOut(string build, string scenario, string key, string? value, Guid? seen, string person, string device) =>
        Make(build, EntryKind.WhatIfSet, $"scenarios/{scenario}/what-ifs/{key}", new JsonObject { ["value"] = value }, seen, person, device);

    public Fact OpenScenario(string build, string scenario, string? title, string? basedOn, Guid? seen, string person, string device)
    {
        var payload = new JsonObject { ["base"] = basedOn };
        if (title is not null) payload["title"] = title;
        return Make(build, EntryKind.ScenarioOpened, $"scenarios/{scenario}", payload, seen, person, device);
    }

    public Fact Enter(string build, string phase, Guid? seen, string person, string device) =>
        Make(build, EntryKind.PhaseEntered, "phase", new JsonObject { ["phase"] = phase }, seen, person, device);

    /// <summary>Takes a fact back: it stays on record, and so does the taking back.</summary>
    public Fact Undo(Fact fact, Guid? seen, string person, string device) =>
        new(FactIds.New(clock), fact.Stream, fact.Kind, fact.Schema, clock.GetUtcNow(), person, device, fact.Subject, seen, fact.Corrects ?? fact.Id, null, null);

    /// <summary>Why a scenario cannot be approved, or null.</summary>
    public static string? Obstacle(Slots.Build build, string scenario)
    {
        if (!build.Scenarios.TryGetValue(scenario, out var s)) return $"there is no scenario '{scenario}'";
        var tried = Choices.WhatIf(build, s);
        return tried.Length == 0 ? null : $"it still rests on what-ifs ({string.Join(", ", tried.Select(w => w.Key))}): drop them or measure the values";
    }

    /// <summary>The customer's yes: the whole choice map, both positions, the methods' versions and the hash of what was shown.</summary>
    /// <param name="how">In what way the yes was given, in words; null where nobody said.</param>
    public Fact Approve(OpenBuild open, Sheet sheet, string by, Guid? seen, string person, string device, string? how = null)
    {
        if (Obstacle(open.Build, sheet.Scenario) is { } why) throw new InvalidOperationException(why);
        var methods = Methods(sheet);
        var payload = new JsonObject
        {
            ["scenario"] = sheet.Scenario,
            ["choices"] = new JsonObject(sheet.Build.Slots.Select(s => s.Id).Where(sheet.Choices.Chosen.ContainsKey).Order(StringComparer.Ordinal)
                .Select(s => KeyValuePair.Create(s, (JsonNode?)sheet.Choices.Chosen[s]))),
            ["build"] = open.Build.Position,
            ["shop"] = sheet.Shop.Position,
            ["methods"] = methods,
            ["shown"] = Shown(sheet, open.Build.Position),
            ["by"] = by,
        };
        if (how is not null) payload["how"] = how;
        return Make(open.Build.Id, EntryKind.ScenarioApproved, "approved", payload, seen, person, device);
    }

    /// <summary>SHA-256 of the canonical check without texts, with the methods' versions.</summary>
    public static string Shown(Sheet sheet, long position)
    {
        var shown = SheetJson.Of(sheet, (position, sheet.Shop.Position), texts: false);
        shown["methods"] = Methods(sheet);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(CanonicalJson.Of(shown))));
    }

    /// <summary>The id of the last entry on a subject, above it or beneath it: what a page must remember to have seen.</summary>
    public Guid? LastOn(string build, string subject) => library.Store.Transact(tx => tx.LastOn(build, subject))?.Fact.Id;

    private static JsonObject Methods(Sheet sheet) => new(sheet.Plan.Catalogue.Bindings.OrderBy(b => b.Calculation.Id, StringComparer.Ordinal)
        .Select(b => KeyValuePair.Create(b.Calculation.Id, (JsonNode?)b.Calculation.About.Version)));

    private Fact Make(string build, EntryKind kind, string subject, JsonNode payload, Guid? seen, string person, string device) =>
        new(FactIds.New(clock), build, kind.Name, kind.Schema, clock.GetUtcNow(), person, device, subject, seen, null, null, payload);
}
