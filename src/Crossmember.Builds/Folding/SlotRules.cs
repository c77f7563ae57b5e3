using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>The rules of one slot and its options.</summary>
internal sealed class SlotRules(BuildRules rules, Slot slot)
{
    public void Check(ref string? currency)
    {
        Governed(slot.Governs, "slots/" + slot.Id, "/governs");
        foreach (var option in slot.Options)
        {
            var subject = $"slots/{slot.Id}/options/{option.Id}";
            if (option.Id is Option.None or Option.Approved) rules.Break(subject, "/id", $"'{option.Id}' is reserved", option.Id == Option.None ? "leave it out: every item has it" : "another id");
            else if (!BuildRules.IsId(option.Id)) rules.Break(subject, "/id", $"'{option.Id}' is no id", "letters, digits, dots and dashes");
            if (!Likeness(option, subject)) continue;
            Body(option, subject);
            Keys(option, subject);
            Currency(option, subject, ref currency);
        }
        foreach (var noted in slot.Noted)
        {
            var subject = $"slots/{slot.Id}/options/{noted.Option}/values/{noted.Pattern}";
            if (slot.Find(noted.Option) is null) rules.Break(subject, "", $"'{slot.Id}' has no option '{noted.Option}'", rules.OptionsOf(slot.Id));
            rules.Members(noted.Pattern, subject, "");
        }
    }

    private bool Likeness(Option option, string subject)
    {
        if (option.Like is not { } like) return true;
        if (like == Option.None || slot.Find(like) is null) rules.Break(subject, "/like", $"'{slot.Id}' has no option '{like}' to start from", rules.OptionsOf(slot.Id));
        else if (BuildRules.IsEndless(option.Id, id => slot.Find(id)?.Like)) rules.Break(subject, "/like", "it is like itself in the end, or at the end of too long a chain", "a chain that ends at an option of its own");
        else return true;
        return false;
    }

    private void Body(Option option, string subject)
    {
        var body = ResolvedOption.Of(slot, option).Body;
        if (body.Class is null) rules.Break(subject, "/class", "'class' is missing", "keep, refurbish, replace, upgrade, make or none");
        if (body.Originality is null) rules.Break(subject, "/originality", "'originality' is missing", "0 (nothing of the old) to 1 (as it was)");
        Governed(option.Governs ?? [], subject, "/governs");
        foreach (var (taken, i) in (option.Takes ?? []).Select((t, i) => (t, i)))
            if (rules.Find(taken) is null) rules.Break(subject, $"/takes/{i}", $"there is no item '{taken}'", rules.NearestSlot(taken));
            else if (taken == slot.Id || taken == Slot.Root) rules.Break(subject, $"/takes/{i}", "it takes itself or the whole vehicle", "other items");
        foreach (var (need, i) in (option.Requires ?? []).Select((q, i) => (q, i)))
        {
            if (rules.Find(need.Slot) is null) rules.Break(subject, $"/requires/{i}/slot", $"there is no item '{need.Slot}'", rules.NearestSlot(need.Slot));
            else foreach (var (wanted, j) in need.Options.Select((o, j) => (o, j)))
                if (!rules.HasOption(need.Slot, wanted))
                    rules.Break(subject, $"/requires/{i}/options/{j}", $"'{need.Slot}' has no option '{wanted}'", rules.OptionsOf(need.Slot));
        }
        foreach (var (pattern, i) in (option.Overrides ?? []).Select((p, i) => (p, i))) Override(pattern, subject, $"/overrides/{i}", option);
    }

    private void Override(string pattern, string subject, string inner, Option option)
    {
        if (rules.Table.Of(pattern) is not { } known) rules.Break(subject, inner, $"'{pattern}' is no parameter", $"nearest known one: {rules.Table.NearestTo(pattern)}");
        else if (known.Merge == Merge.Sum) rules.Break(subject, inner, "contributions to this key add up", "leave it out");
        else if (!ResolvedOption.Of(slot, option).Layers.Any(l => l.Any(p => KeyChecks.Meet(pattern, p.Key))))
            rules.Break(subject, inner, $"the option does not state '{pattern}' itself", "override only what it states");
    }

    private void Keys(Option option, string subject)
    {
        foreach (var (key, _) in option.Parameters) rules.Members(key, subject, "/parameters/" + ObjectReader.Escape(key));
    }

    private void Governed(IEnumerable<Membership> members, string subject, string inner)
    {
        foreach (var m in members)
            if (Sets.IsGoverned(m.Set) && m.Member != "*" && !rules.Build.Sets.Of(m.Set).Contains(m.Member))
                rules.Break(subject, inner, $"'{m.Member}' is not in the set {m.Set}", $"one of: {string.Join(", ", rules.Build.Sets.Of(m.Set))}");
    }

    /// <summary>One currency per shop: the shop's own, else that of the first price.</summary>
    private void Currency(Option option, string subject, ref string? currency)
    {
        foreach (var (price, i) in (option.Prices ?? []).Select((p, i) => (p, i)))
        {
            if (price.Each is not { } each) continue;
            currency ??= each.Currency;
            if (each.Currency != currency) rules.Break(subject, $"/prices/{i}/each", $"a price in {each.Currency}", $"the shop keeps its books in {currency}: convert the quote and note its rate");
        }
    }
}
