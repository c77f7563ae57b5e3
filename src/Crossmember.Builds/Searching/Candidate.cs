using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Searching;

/// <summary>One thing that may be taken at one place: an option of an item, or a part of the stock list in the place of the option's own.</summary>
/// <param name="Option">The option's id; null for a part of the stock list and for leaving the option as it is.</param>
/// <param name="Stock">The part's id in the stock list; null for an option.</param>
/// <param name="Values">What it states, by the plan's key number.</param>
/// <param name="Cost">What is bought and, at the shop's rates, its labor; in the books' currency, tax not counted. Null where a part of the stock list has no price in that currency.</param>
/// <param name="UnsprungMass">kg that hang on the wheels; null where nobody weighed it.</param>
public sealed record Candidate(
    string? Option, string? Stock, string Title, IReadOnlyList<(int Key, Value Value)> Values, IReadOnlyList<KeyValuePair<string, Stated>> Stated, decimal? Cost, double? UnsprungMass,
    IReadOnlyList<Requirement> Requires)
{
    /// <summary>Nothing of the stock list: the option keeps its own.</summary>
    public bool IsOwn => Option is null && Stock is null;
}

/// <summary>A place where one of several candidates is taken.</summary>
/// <param name="Slot">The item; for parts of the stock list the kind of part, named by the keys they state.</param>
/// <param name="IsStock">Whether its candidates lie over what an option states.</param>
/// <param name="Keys">Every key that any of its candidates states.</param>
public sealed record SearchPlace(string Slot, string Title, bool IsStock, IReadOnlyList<Candidate> Candidates, IReadOnlyList<int> Keys);

/// <summary>What a search judges and what it ranks by.</summary>
/// <param name="Judges">Whether the findings of an instance decide on every combination.</param>
/// <param name="Confirms">Whether they decide on the whole sheets of the best; at least what <paramref name="Judges"/> says.</param>
/// <param name="Effort">Id of the calculation and name of the output that tells the effort; the greatest over its instances counts.</param>
/// <param name="Margin">The same of what is to be kept safe; the least counts, and below zero a combination comes after all others.</param>
/// <param name="IsUnsprung">Whether the masses of an item hang on the wheels.</param>
public sealed record SearchGoal(
    Func<Instance, bool> Judges, Func<Instance, bool> Confirms, (string Calculation, string Output) Effort, (string Calculation, string Output) Margin, Func<string, bool> IsUnsprung);
