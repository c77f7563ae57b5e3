using System.Globalization;
using Crossmember.Builds.Pasting;

namespace Crossmember.Builds.Templates;

/// <summary>Reads templates of items, and carries those of <c>data/templates</c>.</summary>
public static class TemplateReader
{
    private const string Folder = "templates/";

    private static readonly string[] s_columns = ["id", "parent", "title", "weight", "governs", "source"];

    /// <summary>By title.</summary>
    public static IReadOnlyList<ItemTemplate> Shipped { get; } =
        [.. typeof(TemplateReader).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(Folder, StringComparison.Ordinal)).Select(Resource).OrderBy(t => t.Title, StringComparer.Ordinal)];

    /// <summary>A template is the program's own text: what is wrong in it throws.</summary>
    /// <param name="id">The name of its file, without the ending.</param>
    /// <param name="csv">A row of column names, then a row for each item; each row says its source.</param>
    public static ItemTemplate Read(string id, string csv)
    {
        var rows = CellReader.Read(csv, ',').Rows;
        if (rows.Count < 2 || !rows[0].Cells.SequenceEqual(s_columns)) throw new InvalidDataException($"{id}: the columns of a template are {string.Join(", ", s_columns)}");
        return new(id, [.. rows.Skip(1).Select(r => Item(id, r))]);
    }

    private static TemplateItem Item(string id, CellRow row)
    {
        if (row.Cells is not [var item, var parent, var title, var weight, var governs, { Length: > 0 }]) throw new InvalidDataException($"{id}, line {row.Line}: a cell or the source is missing");
        return new(item, parent.Length > 0 ? parent : null, title, double.Parse(weight, CultureInfo.InvariantCulture), governs);
    }

    private static ItemTemplate Resource(string name)
    {
        using var stream = typeof(TemplateReader).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return Read(name[Folder.Length..^".csv".Length], reader.ReadToEnd());
    }
}
