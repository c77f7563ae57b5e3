using System.Text;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Pasting;
using Crossmember.Builds.Workshop;
using Crossmember.Documents.Workbooks;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.Starting;

/// <summary>A parts list out of a spreadsheet: read, looked at, put right, and taken in as one deed that can be taken back.</summary>
public sealed partial class PastePage
{
    private const string Sample = "Part\tQty\tPrice\nBrake hose\t2\t18.50";

    private const long LargestBytes = 32L * 1024 * 1024;

    private static readonly UTF8Encoding s_strict = new(false, throwOnInvalidBytes: true);

    private PastedList? _list;
    private IReadOnlyList<Fault> _faults = [];
    private string _file = "", _told = "";
    private string? _busy, _rest;
    private Guid? _shopBatch;
    private (Guid Batch, int Parts)? _going;
    private CancellationTokenSource? _cancel;

    [Inject] private IJSRuntime Js { get; set; } = null!;

    private string? Books => BooksCurrency.Of(Desk, Sheet.Shop, Build);

    private string MassUnit => Viewer.Measure == MeasureSystem.Metric ? "kg" : "lb";

    protected override void Arrange() { }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && RendererInfo.IsInteractive) await Js.InvokeVoidAsync("desk.restore");
        if (_rest is not { } rest) return;
        _rest = null;
        await Js.InvokeVoidAsync("desk.write", "paste-text", rest);
    }

    private async Task ReadTyped()
    {
        var typed = await Js.InvokeAsync<IJSStreamReference?>("desk.said", "paste-text");
        if (typed is null) return;
        await using var stream = await typed.OpenReadStreamAsync(LargestBytes);
        using var reader = new StreamReader(stream, Encoding.UTF8);
        await Read(await reader.ReadToEndAsync(), "the pasted list");
    }

    private async Task ReadFile(InputFileChangeEventArgs e)
    {
        (_list, _faults, _file, _told) = (null, [], e.File.Name, "");
        var faults = new Faults();
        if (e.File.Size > LargestBytes) faults.Add("", "the file is too large", $"at most {LargestBytes >> 20} MiB");
        else
        {
            using var content = new MemoryStream();
            await using (var stream = e.File.OpenReadStream(LargestBytes)) await stream.CopyToAsync(content);
            if (Text(content.ToArray(), faults) is { } text)
            {
                // Whatever it came from, it is text from here on: what needs a look is put right in the field.
                await Js.InvokeVoidAsync("desk.write", "paste-text", text);
                await Read(text, e.File.Name);
                return;
            }
        }
        _faults = faults.List;
    }

    private static string? Text(byte[] content, Faults faults)
    {
        if (content.AsSpan().StartsWith("PK"u8)) return WorkbookCells.Read(content, faults) is { } rows ? CellWriter.Write(rows, '\t') : null;
        if (content.AsSpan().StartsWith((ReadOnlySpan<byte>)[0xD0, 0xCF, 0x11, 0xE0]))
        {
            faults.Add("", "this is a workbook of the old kind", "save it as .xlsx or .csv, or paste the cells");
            return null;
        }
        if (content is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..]) return (content[0] == 0xFF ? Encoding.Unicode : Encoding.BigEndianUnicode).GetString(content);
        try { return s_strict.GetString(content); }
        catch (DecoderFallbackException) { return Encoding.Latin1.GetString(content); }
    }

    private async Task Read(string text, string name)
    {
        (_list, _faults, _file, _told, _busy) = (null, [], name, "", "Reading …");
        using var cancel = _cancel = new();
        StateHasChanged();
        var progress = new Progress<(int Done, int All)>(p => { _busy = _busy is null ? null : $"Reading: {p.Done} of {p.All} rows"; StateHasChanged(); });
        var (build, books, unit) = (Build, Books, MassUnit);
        try
        {
            // A long list takes a moment: the circuit stays free meanwhile, and the button for giving up works.
            var read = await Task.Run(() => PastedList.Read(text, build, books, unit, progress, cancel.Token), cancel.Token);
            if (read is null) _faults = [new("", "nothing is in it", "a row for each part, such as: brake hose, 2, 18.50")];
            else if (read.Parts.Count > PastedList.MostRows) _faults = [new("", $"{read.Parts.Count} rows", $"at most {PastedList.MostRows} at once; the rest in a second list")];
            else _list = read;
        }
        catch (OperationCanceledException)
        {
            _told = "Given up; the list stands in the field as it was.";
        }
        (_busy, _cancel) = (null, null);
    }

    private void Cancel() => _cancel?.Cancel();

    private void Understand(HeaderGuess guess) => _list?.Understand(guess, Build, Books, MassUnit);

    private async Task TakeIn(bool oneOption)
    {
        if (_list is not { } list) return;
        var going = list.Going;
        _busy = $"Writing {Words.Count(going.Count, "part", "parts")} …";
        StateHasChanged();
        await Task.Yield();
        var facts = new TakingInParts(Desk.Stating, Clock, Build, Sheet.Shop, Seen).Facts(going, oneOption, Speaker);
        _going = facts.Count > 0 && facts[0].Batch is { } batch ? (batch, going.Count) : null;
        if (facts.Count > 0) Write(facts);
        _busy = null;
    }

    /// <summary>However the list got in, at once or after somebody else's word was met: it is in, and cannot be taken in again.</summary>
    protected override void AfterWriting()
    {
        if (_going is not var (batch, parts) || _list is not { } list) return;
        var inShop = Pen.Beside(batch).Count > 0;
        var inBuild = View!.Entries.Any(e => e.Fact.Batch == batch);
        if (!inShop && !inBuild) return;
        _shopBatch = inShop && !inBuild ? batch : null;
        _rest = list.Rest();
        _told = $"{Words.Count(parts, "part is", "parts are")} in. {(_rest.Length > 0 ? "What stays is in the field above." : "Nothing is left of the list.")}";
        (_list, _going) = (null, null);
    }

    private Guid? Seen(string stream, string subject) => stream == Id ? View!.Seen(subject) : Desk.Deciding.LastOn(stream, subject);

    private void AfterUndo() => (_told, _list) = ("", null);

    /// <summary>Words said to the shop alone are not among those of the build, which the other button takes back.</summary>
    private void TakeBackFromShop()
    {
        if (_shopBatch is not { } batch) return;
        var said = Pen.Beside(batch);
        var undo = FactIds.New(Clock);
        if (said.Count == 0 || Write([.. said.Reverse().Select(f => Desk.Stating.Undo(f, Seen(f.Stream, f.Subject), Speaker, undo))])) (_shopBatch, _told) = (null, "Taken back from the price list.");
    }
}
