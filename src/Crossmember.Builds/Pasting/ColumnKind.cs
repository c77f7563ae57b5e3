namespace Crossmember.Builds.Pasting;

/// <summary>What a column of a parts list holds.</summary>
public enum ColumnKind { Ignore, Part, Description, Quantity, Price, Vendor, Number, Lead, Item, Category, Mass }

/// <summary>What is thought of a column, and can be said otherwise.</summary>
/// <param name="Header">As written; null where the list has no row of headers.</param>
/// <param name="Mark">How its numbers are written.</param>
public sealed record ColumnGuess(ColumnKind Kind, string? Header, DecimalMark Mark);

/// <summary>What is thought of the columns of a table.</summary>
/// <param name="HasHeader">The first row names the columns.</param>
public sealed record HeaderGuess(bool HasHeader, IReadOnlyList<ColumnGuess> Columns);
