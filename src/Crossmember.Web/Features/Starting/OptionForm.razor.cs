using System.Text.Json.Nodes;
using Crossmember.Builds.Drafting;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.Starting;

/// <summary>An option in as few words as somebody has for it. What is wrong stands beside its field, and what was typed stays.</summary>
public sealed partial class OptionForm
{
    private const string Title = "title", Price = "price", Originality = "originality", Mass = "mass", Below = "massBelow", Empty = "";

    private static readonly OptionClass[] s_classes = [OptionClass.Replace, OptionClass.Refurbish, OptionClass.Upgrade, OptionClass.Make, OptionClass.Keep, OptionClass.None];
    private static readonly string[] s_fields = [Title, Price, Originality, Mass, Below];

    private OptionDraft _draft = new();
    private IReadOnlyList<Fault> _faults = [];
    private IReadOnlyList<ValueKey> _keys = [];
    private string? _ownShare;
    private bool _more;

    [Parameter, EditorRequired] public BuildView View { get; set; } = null!;

    [Parameter, EditorRequired] public Slot Item { get; set; } = null!;

    /// <summary>Null: a new one.</summary>
    [Parameter] public string? Option { get; set; }

    /// <summary>What it says so far; null: nothing.</summary>
    [Parameter] public JsonObject? Body { get; set; }

    /// <summary>The currency of the shop; null: nobody has said it.</summary>
    [Parameter] public string? Books { get; set; }

    [Parameter] public IReadOnlyList<string> Trades { get; set; } = [];

    [Parameter] public MeasureSystem Measure { get; set; }

    [Parameter] public bool Locked { get; set; }

    /// <summary>Answers whether it was kept.</summary>
    [Parameter] public Func<(string Option, JsonObject Body), bool> OnState { get; set; } = _ => false;

    [Parameter] public EventCallback OnClose { get; set; }

    [Inject] private IJSRuntime Js { get; set; } = null!;

    private string Assumed
    {
        get
        {
            if (Option == Crossmember.Builds.Slots.Option.AsFound) return "as found, 100 %";
            if (_draft.Like is not ("" or Crossmember.Builds.Slots.Option.AsFound)) return "as what it starts from";
            var kind = Enum.TryParse<OptionClass>(_draft.Class, true, out var known) ? known : OptionClass.Replace;
            return $"not said: {Shown.Share(OriginalityWords.Usual(kind))} assumed";
        }
    }

    private string NextTrade => Trades.FirstOrDefault(t => _draft.Hours.TrueForAll(h => h.Trade != t)) ?? "";

    private IReadOnlyList<Fault> Others => [.. _faults.Where(f => !s_fields.Contains(f.Path) && !f.Path.StartsWith("hours/", StringComparison.Ordinal) && !f.Path.StartsWith("values/", StringComparison.Ordinal))];

    protected override void OnInitialized()
    {
        if (Body is not null) _draft = DraftReader.Of(Body);
        else if (Option is not null) _draft.Class = "keep";
        if (_draft.Hours.Count == 0) _draft.Hours.Add(new() { Trade = NextTrade });
        _keys = ValueKey.Of(View.Sheet(View.Usual), Item);
        _ownShare = _draft.Originality.Length > 0 && char.IsDigit(_draft.Originality[0]) ? _draft.Originality : null;
        _more = _draft.Values.Count > 0 || _draft.Mass.Length > 0 || _draft.Lead.Length > 0 || _draft.Like.Length > 0 || _draft.MassBelow.Length > 0;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && RendererInfo.IsInteractive) await Js.InvokeVoidAsync("desk.restore");
    }

    private string Draft(string field) => $"option.{View.Build.Id}.{Item.Id}.{Option}.{field}";

    private IReadOnlyList<Fault> At(string path) => [.. _faults.Where(f => f.Path == path)];

    private string? Bad(string path) => At(path).Count > 0 ? "true" : null;

    private async Task Send()
    {
        var faults = new Faults();
        var used = Item.Options.Select(o => o.Id).Concat(View.Entries.Select(e => e.Fact.Subject.Split('/')).Where(s => s is ["slots", var slot, "options", ..] && slot == Item.Id).Select(s => s[3]));
        var option = Option ?? NewId.Of(_draft.Title, used) ?? NewId.Free("option", used);
        var body = new DraftWriter(View.Open.Plan.Catalogue.Table, Item, option, Books).Write(_draft, Body, faults);
        _faults = faults.List;
        if (_faults.Any(f => !s_fields.Take(2).Contains(f.Path) && !f.Path.StartsWith("hours/", StringComparison.Ordinal))) _more = true;
        if (body is null || !OnState((option, body))) return;
        await Js.InvokeVoidAsync("desk.forgetAll", $"option.{View.Build.Id}.{Item.Id}.{Option}.");
        await OnClose.InvokeAsync();
    }
}
