namespace Crossmember.Documents.Paper;

/// <summary>A document in blocks: the one source of its form on paper and of its form as a page.</summary>
/// <param name="Running">What stands at the head of every page.</param>
/// <param name="Foot">What stands at the foot of every page, beside its number.</param>
/// <param name="Made">The instant it bears, handed in: no clock is read here.</param>
public sealed record Document(string Title, string Running, string Foot, DateTimeOffset Made, IReadOnlyList<Block> Blocks);

/// <summary>How far a document has come.</summary>
/// <param name="Doing">What is being done, in a few words.</param>
/// <param name="Share">0 to 1.</param>
public readonly record struct Step(string Doing, double Share);
