namespace Crossmember.Builds.Pasting;

/// <summary>The words people put over the columns of parts lists, in the languages whose lists come to a shop. Common practice, no source.</summary>
public static class HeaderWords
{
    private static readonly (ColumnKind Kind, string Words)[] s_words =
    [
        (ColumnKind.Part, "part|part name|name|item name|product|product name|article|artikel|bezeichnung|benennung|teil|ersatzteil|pièce|piece|désignation|designation|pieza|articulo|artículo|producto|pezzo|articolo|denominazione|onderdeel|benaming|what|goods|item description|part description"),
        (ColumnKind.Description, "description|desc|details|remarks|notes|note|comment|comments|beschreibung|bemerkung|description complémentaire|remarque|descripcion|descripción|descrizione|omschrijving|specification|spec"),
        (ColumnKind.Quantity, "qty|quantity|q ty|count|number of|pieces|pcs|pc|no off|off|needed|qty req|qty required|order qty|units|menge|anzahl|stück|stueck|stk|quantité|quantite|qté|qte|nombre|cantidad|cant|unidades|quantità|quantita|aantal|hoeveelheid|st"),
        (ColumnKind.Price, "price|unit price|each|ea|price each|price ea|cost|unit cost|cost each|rate|list|list price|net price|your price|preis|einzelpreis|stückpreis|stueckpreis|e preis|ep|prix|prix unitaire|pu|pu ht|precio|precio unitario|prezzo|prezzo unitario|prijs|stukprijs|price usd|price eur|usd|eur|gbp"),
        (ColumnKind.Vendor, "vendor|supplier|source|seller|from|store|dealer|bought from|lieferant|händler|haendler|fournisseur|proveedor|fornitore|leverancier"),
        (ColumnKind.Number, "part number|part no|part nr|part #|part|p n|pn|number|no|nr|sku|item number|item no|item #|catalog number|catalogue number|cat no|stock number|stock no|order number|order no|mpn|code|ref|reference|artikelnummer|artikel nr|art nr|bestellnummer|teilenummer|teile nr|référence|reference|réf|numéro|referencia|código|codigo|codice|riferimento|artikelnr|bestelnummer"),
        (ColumnKind.Lead, "lead|lead time|delivery|delivery time|availability|eta|ships in|weeks|lieferzeit|délai|delai|délai de livraison|plazo|plazo de entrega|consegna|tempi di consegna|levertijd"),
        (ColumnKind.Item, "item|goes on|for|where|where used|location|system|assembly|group|area|place|position|baugruppe|gruppe|ensemble|groupe|emplacement|grupo|conjunto|gruppo|groep"),
        (ColumnKind.Category, "category|type|class|kind|kategorie|art|catégorie|categorie|categoría|categoria|tipo|soort"),
        (ColumnKind.Mass, "weight|mass|wt|weight lb|weight lbs|weight kg|lb|lbs|kg|gewicht|masse|poids|peso"),
    ];

    /// <summary>Sums of a line: the price each is wanted, and the sum follows from it.</summary>
    private static readonly HashSet<string> s_sums =
        [.. "total|line total|ext|extended|ext price|extended price|sum|subtotal|gesamt|gesamtpreis|summe|total ht|montant|importe|totale|importo|totaal|bedrag|tax|vat|mwst|tva|iva|btw|core|discount|rabatt|remise|date|datum|fecha|data|line|pos|row|id".Split('|')];

    private static readonly Dictionary<string, ColumnKind> s_kinds = Kinds();

    /// <summary>Words that say one thing over numbers and another over texts.</summary>
    private static readonly HashSet<string> s_amounts = ["amount", "betrag", "bedrag", "unit"];

    /// <summary>What a header says; null where it says nothing that is known. <see cref="ColumnKind.Ignore"/> is known and not wanted.</summary>
    public static ColumnKind? Of(string header)
    {
        var plain = Plain(header);
        if (plain.Length == 0) return null;
        if (s_kinds.TryGetValue(plain, out var kind)) return kind;
        if (s_sums.Contains(plain) || s_amounts.Contains(plain)) return ColumnKind.Ignore;
        // "Unit price (USD)" and "Weight, pounds" are the same without what stands in brackets or behind.
        var cut = header.IndexOfAny(['(', '[', '/', ',']);
        if (cut > 0) return Of(header[..cut]);
        // "Weight in grams" and "Price EUR" end in what the numbers are counted in.
        var last = header.TrimEnd().LastIndexOf(' ');
        return last > 0 && (HeaderUnits.IsUnit(header[last..].Trim()) || header[last..].Trim() == "in") ? Of(header[..last]) : null;
    }

    /// <summary>A header that may be a quantity or a price: its numbers tell.</summary>
    public static bool IsAmount(string header) => s_amounts.Contains(Plain(header));

    private static string Plain(string header) =>
        string.Join(' ', string.Concat(header.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) || c == '#' ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries));

    private static Dictionary<string, ColumnKind> Kinds()
    {
        var kinds = new Dictionary<string, ColumnKind>(StringComparer.Ordinal);
        // The same word may stand for two: the earlier kind keeps it ("part" is the part, "part no" its number).
        foreach (var (kind, words) in s_words)
            foreach (var word in words.Split('|')) kinds.TryAdd(Plain(word), kind);
        return kinds;
    }
}
