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
    private JsonObject? _body;
    private Guid? _seen;
    private (string Option, JsonObject Body)? _sent;
    private IReadOnlyList<Fault> _faults = [];
    private IReadOnlyList<ValueKey> _keys = [];
    private string? _ownShare;
    private bool _more;

    [Parameter, EditorRequired] public BuildView View { get; set; } = null!;

    [Parameter, EditorRequired] public Slot Item { get; set; } = null!;

    /// <summary>Null: a new one.</summary>
    [Parameter] public string? Option { get; set; }

    /// <summary>What it says when the form is opened; null: nothing.</summary>
    [Parameter] public JsonObject? Body { get; set; }

    /// <summary>The currency of the shop; null: nobody has said it.</summary>
    [Parameter] public string? Books { get; set; }

    [Parameter] public IReadOnlyList<string> Trades { get; set; } = [];

    [Parameter] public MeasureSystem Measure { get; set; }

    [Parameter] public bool Locked { get; set; }

    /// <summary>An option, its body, and the entry on it that the person began with; answers whether it was kept.</summary>
    [Parameter] public Func<(string Option, JsonObject Body, Guid? Seen), bool> OnState { get; set; } = _ => false;

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

    /// <summary>The page goes on to newer states under the form: what was read from one and said of another would be nobody's word.</summary>
    protected override void OnInitialized()
    {
        (_body, _seen) = (Body, Option is null ? null : View.Seen(Subject(Option)));
        if (_body is not null) _draft = DraftReader.Of(_body);
        else if (Option is not null) _draft.Class = "keep";
        if (_draft.Hours.Count == 0) _draft.Hours.Add(new() { Trade = NextTrade });
        _keys = ValueKey.Of(View.Sheet(View.Usual), Item);
        _ownShare = _draft.Originality.Length > 0 && char.IsDigit(_draft.Originality[0]) ? _draft.Originality : null;
        _more = _draft.Values.Count > 0 || _draft.Mass.Length > 0 || _draft.Lead.Length > 0 || _draft.Like.Length > 0 || _draft.MassBelow.Length > 0;
    }

    /// <summary>What met somebody else's word and stands after all has been kept.</summary>
    protected override Task OnParametersSetAsync() =>
        _sent is { } sent && JsonNode.DeepEquals(StatedBody.Of(View.Entries, Item.Id, sent.Option), sent.Body) ? Close() : Task.CompletedTask;

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && RendererInfo.IsInteractive) await Js.InvokeVoidAsync("desk.restore");
    }

    private string Subject(string option) => $"slots/{Item.Id}/options/{option}";

    /// <summary>Where what is typed is kept: by the option, or by what a new one begins with, so that no draft gets into another option.</summary>
    private string Draft(string field) => $"option.{View.Build.Id}.{Item.Id}.{Option ?? $"+{_body?["stock"] ?? _body?["title"]}"}.{field}";

    private IReadOnlyList<Fault> At(string path) => [.. _faults.Where(f => f.Path == path)];

    private string? Bad(string path) => At(path).Count > 0 ? "true" : null;

    /// <summary>A draft may have been put back out of sight.</summary>
    private void Unfold() => _more = true;

    private async Task Send()
    {
        var faults = new Faults();
        var used = Item.Options.Select(o => o.Id).Concat(View.Entries.Select(e => e.Fact.Subject.Split('/')).Where(s => s is ["slots", var slot, "options", ..] && slot == Item.Id).Select(s => s[3]));
        var option = Option ?? NewId.Of(_draft.Title, used) ?? NewId.Free("option", used);
        var body = new DraftWriter(View.Open.Plan.Catalogue.Table, Item, option, Books).Write(_draft, _body, faults);
        _faults = faults.List;
        if (_faults.Any(f => !s_fields.Take(2).Contains(f.Path) && !f.Path.StartsWith("hours/", StringComparison.Ordinal))) _more = true;
        if (body is null) return;
        var seen = Option is null ? View.Seen(Subject(option)) : _seen;
        if (OnState((option, body, seen))) await Close();
        else _sent = (option, body);
    }

    private async Task Close()
    {
        _sent = null;
        await Js.InvokeVoidAsync("desk.forgetAll", Draft(""));
        await OnClose.InvokeAsync();
    }
}
