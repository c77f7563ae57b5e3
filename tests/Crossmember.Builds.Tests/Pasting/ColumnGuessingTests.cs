using Crossmember.Builds.Pasting;

namespace Crossmember.Builds.Tests.Pasting;

/// <summary>Lists as they come to a shop, invented: what stands over their columns and in them.</summary>
public sealed class ColumnGuessingTests
{
    private static string Guessed(string text)
    {
        var guess = ColumnGuessing.Of(CellReader.Read(text));
        return (guess.HasHeader ? "" : "no header: ") + string.Join(' ', guess.Columns.Select(c => c.Kind.ToString().ToLowerInvariant()));
    }

    /// <summary>Twenty rows of headers, each over one row of a list.</summary>
    [Theory]
    [InlineData("Part,Qty,Price\nBrake hose,2,18.50", "part quantity price")]
    [InlineData("Qty,Description,Each\n2,Brake hose,18.50", "quantity part price")]
    [InlineData("Part Number,Description,Qty.,Unit Price,Total\nBH-22,Brake hose,2,18.50,37.00", "number part quantity price ignore")]
    [InlineData("Item,Description,Amount,Unit price\nBrakes,Brake hose,2,18.50", "item part quantity price")]
    [InlineData("Article\tQuantity\tCost each\tSupplier\tLead time\nHose\t2\t18.5\tCoast\t2 weeks", "part quantity price vendor lead")]
    [InlineData("SKU;Name;Ea;Weight (lb)\nA1;Hose;18.50;2", "number part price mass")]
    [InlineData("Name,Notes,PCS,List price,Vendor\nHose,long,2,18,Coast", "part description quantity price vendor")]
    [InlineData("Product,Product,Qty,Price\nHose,H2,1,2", "part description quantity price")]
    [InlineData("Bezeichnung;Menge;Einzelpreis;Gesamtpreis\nSchlauch;2;18,50;37,00", "part quantity price ignore")]
    [InlineData("Artikelnummer;Bezeichnung;Stück;Preis;Lieferzeit\nS1;Schlauch;2;18,50;3 Wochen", "number part quantity price lead")]
    [InlineData("Référence;Désignation;Quantité;Prix unitaire;Montant\nF1;Flexible;2;18,50;37,00", "number part quantity price ignore")]
    [InlineData("Código;Descripción;Cantidad;Precio;Proveedor\nM1;Manguera;2;18,50;Costa", "number part quantity price vendor")]
    [InlineData("Codice;Articolo;Quantità;Prezzo;Peso\nT1;Tubo;2;18,50;1", "number part quantity price mass")]
    [InlineData("Artikelnr;Omschrijving;Aantal;Prijs;Levertijd\nS1;Slang;2;18,50;2 weken", "number part quantity price lead")]
    [InlineData("System,Part name,Part no.,Qty req,Unit cost\nBrakes,Hose,BH,2,18", "item part number quantity price")]
    [InlineData("Line,Part,Category,Qty,Price\n1,Hose,parts,2,18", "ignore part category quantity price")]
    [InlineData("Where used | Part | No. | Off | Rate\nFront axle | Hose | BH | 2 | 18", "item part number quantity price")]
    [InlineData("Part,Price (USD),Availability\nHose,18.50,in stock", "part price lead")]
    [InlineData("Goods,Units,EUR,Tax\nHose,2,18,3", "part quantity price ignore")]
    [InlineData("Part #,What,Each,Wt\nBH-1,Hose,18.50,2 lb", "number part price mass")]
    public void Headers_are_understood(string text, string kinds) => Assert.Equal(kinds, Guessed(text));

    [Theory]
    [InlineData("Brake hose\t2\t18.50\nMaster cylinder\t1\t142.00\n", "no header: part quantity price")]
    [InlineData("2,BH-22,Brake hose for the front,$18.50\n1,MC-7,Master cylinder with two circuits,$142\n", "no header: quantity number part price")]
    [InlineData("Brake hose;18,50 EUR;2-3 weeks;2 lb\nCylinder;142,00 EUR;4 weeks;9 lb\n", "no header: part price lead mass")]
    [InlineData("brake hose\nmaster cylinder\n", "no header: part")]
    public void Without_headers_what_stands_in_the_columns_tells(string text, string kinds) => Assert.Equal(kinds, Guessed(text));

    [Fact]
    public void The_decimal_mark_is_guessed_for_each_column()
    {
        var guess = ColumnGuessing.Of(CellReader.Read("Bezeichnung;Preis;Gewicht\nSchlauch;1.218,50;0.5\nRohr;3,20;1.25"));
        Assert.Equal([DecimalMark.Comma, DecimalMark.Point], guess.Columns.Skip(1).Select(c => c.Mark));
    }

    [Fact]
    public void Nothing_is_no_list() => Assert.Empty(ColumnGuessing.Of(CellReader.Read("  \n \t ")).Columns);
}
