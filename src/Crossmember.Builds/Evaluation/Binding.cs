using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>Ties a calculation to the master sheet.</summary>
/// <remarks>
/// In an input pattern <c>{set}</c> is the instance's own member and must be in <see cref="ForEach"/>; <c>*</c> gives all members as a map;
/// a bare <c>{set}</c> gives the member's name itself. An input that is not listed gets its default, or stays missing.
/// </remarks>
/// <param name="Raises">Checks it raises in a sheet; null: all.</param>
public sealed record Binding(
    Calculation Calculation, IReadOnlyList<string> ForEach, IReadOnlyDictionary<string, string> Inputs,
    IReadOnlyDictionary<string, string> Publishes, IReadOnlyList<string>? Raises = null)
{
    public bool Does(string check) => Raises?.Contains(check) ?? true;
}
