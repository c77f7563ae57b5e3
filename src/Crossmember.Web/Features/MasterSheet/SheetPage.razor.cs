using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>The vehicle as a tree of items, everything that is known of each, and what is missing.</summary>
public sealed partial class SheetPage
{
    private Sought _sought = Sought.Nothing;
    private bool _seeking;
    private (string? Item, string? Key) _at;
    private Slot? _slot;
    private Entry? _wrong;
    private Guid? _wrongSeen;
    private ItemMarks _marks = null!;
    private SheetLines _lines = null!;
    private IReadOnlyList<ItemRow> _rows = [];
    private IReadOnlyList<ItemRow> _shown = [];
    private IReadOnlyList<SheetLine> _found = [];
    private IReadOnlyList<Unsettled> _missing = [];
    private IReadOnlyList<VerdictTurn> _turns = [];
    private Sheet? _of, _past;

    [SupplyParameterFromQuery(Name = "item")] public string? Item { get; set; }

    /// <summary>The value that the form opens with.</summary>
    [SupplyParameterFromQuery(Name = "key")] public string? Key { get; set; }

    protected override void Arrange()
    {
        if (_at != (Item, Key)) (_at, _seeking, _wrong, _turns) = ((Item, Key), false, null, []);
        _slot = Item is { } item ? Build.Find(item) : null;
        if (!ReferenceEquals(_of, Sheet))
        {
            (_past, _of) = (_of, Sheet);
            _marks = ItemMarks.Of(Sheet, Build.Scenarios.GetValueOrDefault(Scenario));
            _lines = new(Sheet);
            _missing = Unsettled.Of(Sheet);
        }
        _rows = ItemRow.Of(Sheet, _marks, _lines, Viewer.Measure);
        Find();
    }

    /// <summary>What somebody says of the item in hand waits to be asked for.</summary>
    protected override bool IsInHand(string subject) =>
        _slot is { } slot && (subject == $"slots/{slot.Id}" || subject.StartsWith($"slots/{slot.Id}/", StringComparison.Ordinal));

    private void Seek(Sought sought)
    {
        (_sought, _seeking) = (sought, !sought.IsNothing);
        Find();
    }

    private void Find()
    {
        _found = _sought.IsNothing ? [] : _lines.Together(_lines.All.Where(_sought.Finds));
        var with = _found.Select(l => l.Item.Id).ToHashSet(StringComparer.Ordinal);
        _shown = _sought.IsNothing ? _rows : [.. _rows.Where(r => with.Contains(r.Item.Id) || _sought.Finds(r.Item))];
    }

    private string Address(string? item) => AddressIn(item, Scenario);

    private string AddressIn(string? item, string scenario) =>
        $"builds/{Uri.EscapeDataString(Id)}/sheet?{(item is null ? "" : $"item={Uri.EscapeDataString(item)}&")}in={Uri.EscapeDataString(scenario)}";

    /// <summary>Where a value can be noted: at its item, with the form open for it.</summary>
    private string KeyAddress(SheetLine line) => $"{Address(line.Item.Id)}&key={Uri.EscapeDataString(line.Noting)}#note";

    private void SwitchWhatIf(string scenario) => Nav.NavigateTo(AddressIn(_slot?.Id, scenario));
}
