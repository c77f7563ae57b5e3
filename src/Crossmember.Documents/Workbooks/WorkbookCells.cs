using System.Globalization;
using System.IO.Compression;
using System.Text;
using Crossmember.Engineering.Reading;
using ExcelDataReader;
using ExcelDataReader.Exceptions;

namespace Crossmember.Documents.Workbooks;

/// <summary>Reads the first sheet of an Office Open XML workbook (ISO/IEC 29500) as cells of text: what a spreadsheet would put on the clipboard, with numbers written plainly.</summary>
public static class WorkbookCells
{
    /// <summary>Beyond this a sheet is no parts list.</summary>
    public const int MostRows = 100_000, MostColumns = 200;

    private const long LargestUnpacked = 256L * 1024 * 1024;

    // The library asks for a code page of the old binary kind whatever it reads, and the framework has it only when told so.
    static WorkbookCells() => Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);

    /// <summary>Rows of the first sheet that holds anything, or null with a fault.</summary>
    public static IReadOnlyList<IReadOnlyList<string>>? Read(ReadOnlyMemory<byte> content, Faults faults)
    {
        using var stream = new MemoryStream(content.ToArray(), writable: false);
        if (!IsHarmless(stream)) return Refuse(faults, "this is no workbook that can be read", "a .xlsx file of at most 256 MiB unpacked, without a password, or paste the cells");
        try
        {
            using var reader = Ask(() => ExcelReaderFactory.CreateOpenXmlReader(stream));
            return Rows(reader, faults);
        }
        catch (InvalidDataException)
        {
            return Refuse(faults, "the workbook is damaged", "open it in a spreadsheet and save it anew, or paste the cells");
        }
    }

    private static IReadOnlyList<IReadOnlyList<string>>? Rows(IExcelDataReader reader, Faults faults)
    {
        do
        {
            var rows = new List<IReadOnlyList<string>>();
            while (Ask(reader.Read))
            {
                var width = Ask(() => reader.FieldCount);
                if (width > MostColumns || rows.Count >= MostRows) return Refuse(faults, "the sheet is too large", $"at most {MostRows} rows and {MostColumns} columns");
                var cells = Ask(() => Enumerable.Range(0, width).Select(reader.GetValue).ToArray());
                rows.Add([.. cells.Select(Text)]);
            }
            if (rows.Exists(r => r.Any(c => c.Length > 0))) return rows;
        }
        while (Ask(reader.NextResult));
        return Refuse(faults, "the workbook is empty", "a sheet with a row for each part");
    }

    /// <summary>One call of the library and nothing of ours: on a torn file it throws many things, which for whoever hands the file in are all the same.</summary>
    private static T Ask<T>(Func<T> library)
    {
        try
        {
            return library();
        }
        catch (Exception e) when (e is ExcelReaderException or System.Xml.XmlException or InvalidOperationException or FormatException or ArgumentException or IndexOutOfRangeException or NullReferenceException or OverflowException or KeyNotFoundException or IOException)
        {
            throw new InvalidDataException("the workbook is damaged", e);
        }
    }

    private static string Text(object? value) => value switch
    {
        null => "",
        // 15 digits are what the cell showed: the last bits of a double are noise of the file.
        double number => number.ToString("G15", CultureInfo.InvariantCulture),
        DateTime day => day.TimeOfDay == TimeSpan.Zero ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : day.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture),
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>A zip whose parts, unpacked, fit into memory: a small file may unpack into a very large one.</summary>
    private static bool IsHarmless(MemoryStream stream)
    {
        try
        {
            using var zip = new ZipArchive(stream, ZipArchiveMode.Read, leaveOpen: true);
            var left = LargestUnpacked;
            // One part after the other: sizes written to mislead add up to more than a number holds.
            return zip.Entries.Count < 10_000 && zip.Entries.All(e => e.Length >= 0 && (left -= e.Length) >= 0);
        }
        catch (InvalidDataException)
        {
            return false;
        }
        finally
        {
            stream.Position = 0;
        }
    }

    private static IReadOnlyList<IReadOnlyList<string>>? Refuse(Faults faults, string wrong, string right)
    {
        faults.Add("", wrong, right);
        return null;
    }
}
