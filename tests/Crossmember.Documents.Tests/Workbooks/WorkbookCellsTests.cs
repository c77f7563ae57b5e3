using System.IO.Compression;
using System.Security;
using System.Text;
using Crossmember.Documents.Workbooks;
using Crossmember.Engineering.Reading;

namespace Crossmember.Documents.Tests.Workbooks;

/// <summary>Workbooks written here part by part as the standard describes them, not by a library: ISO/IEC 29500-1, clauses 12.3 and 18.3, from memory.</summary>
public sealed class WorkbookCellsTests
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main", Relation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    [Fact]
    public void Texts_numbers_and_gaps_are_read_where_they_stand()
    {
        var rows = Read(Workbook("""
            <row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="inlineStr"><is><t>Qty</t></is></c><c r="C1" t="s"><v>1</v></c></row>
            <row r="2"><c r="A2" t="inlineStr"><is><t>Brake hose, 3/8"</t></is></c><c r="B2"><v>2</v></c><c r="C2"><v>18.5</v></c></row>
            <row r="4"><c r="A4" t="inlineStr"><is><t>Ölfilter</t></is></c><c r="C4"><v>0.30000000000000004</v></c></row>
            """, "Part", "Each & every"));
        Assert.Equal(["Part", "Qty", "Each & every"], rows[0]);
        Assert.Equal(["Brake hose, 3/8\"", "2", "18.5"], rows[1]);
        Assert.Equal(["Ölfilter", "", "0.3"], rows[^1]);
        Assert.Equal(3, rows.Count(r => r.Any(c => c.Length > 0)));
    }

    [Fact]
    public void The_value_of_a_formula_counts_and_not_its_text() =>
        Assert.Equal("37", Read(Workbook("""<row r="1"><c r="A1"><f>2*18.5</f><v>37</v></c></row>"""))[0][0]);

    [Theory]
    [InlineData("")]
    [InlineData("not a workbook")]
    [InlineData("PK\u0003\u0004 torn")]
    public void What_is_no_workbook_is_one_plain_fault(string content)
    {
        var faults = new Faults();
        Assert.Null(WorkbookCells.Read(Encoding.Latin1.GetBytes(content), faults));
        Assert.Contains("paste the cells", Assert.Single(faults.List).Right, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_sheet_says_what_is_wanted()
    {
        var faults = new Faults();
        Assert.Null(WorkbookCells.Read(Workbook(""), faults));
        Assert.Contains("a row for each part", Assert.Single(faults.List).Right, StringComparison.Ordinal);
    }

    /// <summary>Three hundred seeded damages: an answer or one fault, never an exception.</summary>
    [Fact]
    public void A_damaged_workbook_does_no_harm()
    {
        var whole = Workbook("""<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1"><v>2</v></c></row>""", "Part");
        for (var seed = 1; seed <= 300; seed++)
        {
            var random = new Random(seed);
            var torn = whole.ToArray();
            for (var n = random.Next(1, 6); n > 0; n--) torn[random.Next(torn.Length)] = (byte)random.Next(256);
            var faults = new Faults();
            var rows = WorkbookCells.Read(torn.AsMemory(0, random.Next(torn.Length / 2, torn.Length + 1)), faults);
            Assert.Equal(rows is null ? 1 : 0, faults.Count);
        }
    }

    /// <summary>Damage inside the parts, packed whole: what unpacks well may still be nonsense.</summary>
    [Theory]
    [InlineData("<row r=\"1\"><c r=\"A1\" t=\"s\"><v>77</v></c></row>")]
    [InlineData("<row r=\"1\"><c r=\"ZZZZ99999999\"><v>1</v></c></row>")]
    [InlineData("<row r=\"x\"><c r=\"A1\" t=\"s\"><v>abc</v></c></row>")]
    [InlineData("<row r=\"1\"><c r=\"A1\"><v>1</v></row>")]
    public void Nonsense_in_a_sheet_does_no_harm(string sheet)
    {
        var faults = new Faults();
        var rows = WorkbookCells.Read(Workbook(sheet, "Part"), faults);
        Assert.Equal(rows is null ? 1 : 0, faults.Count);
    }

    /// <summary>Two empty parts that say of themselves, in the fields for sizes of 64 bits, that they unpack to almost 2^63 bytes each: APPNOTE 6.3.10, 4.3.12, 4.3.16 and 4.5.3, from memory.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Sizes_written_to_mislead_are_one_plain_fault(int parts)
    {
        using var stream = new MemoryStream();
        using var zip = new BinaryWriter(stream);
        for (var n = 0; n < parts; n++) Local(zip, $"part{n}");
        var directory = (uint)stream.Position;
        for (var n = 0; n < parts; n++) Central(zip, $"part{n}", (uint)(n * (30 + "part0".Length)), long.MaxValue);
        var length = (uint)stream.Position - directory;
        Fields(zip, 0x06054b50u, (ushort)0, (ushort)0, (ushort)parts, (ushort)parts, length, directory, (ushort)0);
        var faults = new Faults();
        Assert.Null(WorkbookCells.Read(stream.ToArray(), faults));
        Assert.Contains("at most 256 MiB unpacked", Assert.Single(faults.List).Right, StringComparison.Ordinal);
    }

    /// <summary>Signature, versions, flags, method, time, date, checksum, sizes, lengths; the extra field of kind 1 holds the size that does not fit.</summary>
    private static void Local(BinaryWriter zip, string name)
    {
        Fields(zip, 0x04034b50u, (ushort)45, (ushort)0, (ushort)0, (ushort)0, (ushort)0, 0u, 0u, 0u, (ushort)name.Length, (ushort)0);
        zip.Write(Encoding.ASCII.GetBytes(name));
    }

    private static void Central(BinaryWriter zip, string name, uint at, long size)
    {
        Fields(zip, 0x02014b50u, (ushort)45, (ushort)45, (ushort)0, (ushort)0, (ushort)0, (ushort)0, 0u, 0u, uint.MaxValue, (ushort)name.Length, (ushort)12, (ushort)0, (ushort)0, (ushort)0, 0u, at);
        zip.Write(Encoding.ASCII.GetBytes(name));
        Fields(zip, (ushort)1, (ushort)8);
        zip.Write(size);
    }

    private static void Fields(BinaryWriter zip, params object[] fields)
    {
        foreach (var field in fields)
            if (field is uint four) zip.Write(four);
            else zip.Write((ushort)field);
    }

    private static IReadOnlyList<IReadOnlyList<string>> Read(byte[] workbook)
    {
        var faults = new Faults();
        var rows = WorkbookCells.Read(workbook, faults);
        Assert.True(rows is not null, string.Join('\n', faults.List));
        return rows!;
    }

    private static byte[] Workbook(string rows, params string[] shared)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            Part(zip, "[Content_Types].xml", """
                <Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/>
                <Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/>
                <Override PartName="/xl/worksheets/sheet1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>
                <Override PartName="/xl/sharedStrings.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml"/></Types>
                """);
            Part(zip, "_rels/.rels", Relations(("rId1", "officeDocument", "xl/workbook.xml")));
            Part(zip, "xl/_rels/workbook.xml.rels", Relations(("rId1", "worksheet", "worksheets/sheet1.xml"), ("rId2", "sharedStrings", "sharedStrings.xml")));
            Part(zip, "xl/workbook.xml", $"""<workbook xmlns="{Main}" xmlns:r="{Relation}"><sheets><sheet name="Parts" sheetId="1" r:id="rId1"/></sheets></workbook>""");
            Part(zip, "xl/worksheets/sheet1.xml", $"""<worksheet xmlns="{Main}"><sheetData>{rows}</sheetData></worksheet>""");
            Part(zip, "xl/sharedStrings.xml", $"""<sst xmlns="{Main}" count="{shared.Length}" uniqueCount="{shared.Length}">{string.Concat(shared.Select(s => $"<si><t>{SecurityElement.Escape(s)}</t></si>"))}</sst>""");
        }
        return stream.ToArray();
    }

    private static string Relations(params (string Id, string Kind, string Target)[] all) =>
        $"""<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">{string.Concat(all.Select(r => $"<Relationship Id=\"{r.Id}\" Type=\"{Relation}/{r.Kind}\" Target=\"{r.Target}\"/>"))}</Relationships>""";

    private static void Part(ZipArchive zip, string name, string xml)
    {
        using var writer = new StreamWriter(zip.CreateEntry(name).Open(), new UTF8Encoding(false));
        writer.Write(xml.StartsWith("<?", StringComparison.Ordinal) ? xml : """<?xml version="1.0" encoding="UTF-8" standalone="yes"?>""" + xml);
    }
}
