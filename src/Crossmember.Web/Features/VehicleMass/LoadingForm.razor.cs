using System.Text.Json.Nodes;
using Crossmember.Builds.Drafting;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>Who and what is on board in one loading condition. What is wrong stands beside its field, and what was typed stays.</summary>
public sealed partial class LoadingForm
{
    private LoadingDraft _draft = LoadingDraft.Of(null);
    private (string Condition, Guid? Seen)? _of;
    private bool _changed, _restore;
    private IReadOnlyList<Fault> _faults = [];

    [Parameter, EditorRequired] public BuildView View { get; set; } = null!;

    [Parameter, EditorRequired] public string Condition { get; set; } = "";

    [Parameter] public MeasureSystem Measure { get; set; }

    [Parameter] public bool Locked { get; set; }

    /// <summary>Keeps a payload of the condition, made from the entry that was seen; answers whether it was kept.</summary>
    [Parameter, EditorRequired] public Func<(string Condition, JsonObject Body, Guid? Seen), bool> OnState { get; set; } = null!;

    [Parameter] public EventCallback<MassRef> OnPick { get; set; }

    [Inject] private IJSRuntime Js { get; set; } = null!;

    /// <summary>The page goes on to newer states: a form that nobody has typed into goes with them, one in hand stays as it was begun.</summary>
    protected override void OnParametersSet()
    {
        var seen = View.Seen($"conditions/{Condition}");
        if (_of is { } known && known.Condition == Condition && (_changed || known.Seen == seen)) return;
        _restore = _of?.Condition != Condition;
        Begin();
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (!_restore || !RendererInfo.IsInteractive) return;
        _restore = false;
        await Js.InvokeVoidAsync("desk.restore");
    }

    private void Begin()
    {
        (_of, _draft, _changed, _faults) = ((Condition, View.Seen($"conditions/{Condition}")), LoadingDraft.Of(StatedCondition.Of(View.Entries, Condition)), false, []);
        KeepOneBlank();
    }

    private void Change()
    {
        _changed = true;
        KeepOneBlank();
    }

    /// <summary>There is always a line to write the next into.</summary>
    private void KeepOneBlank()
    {
        if (_draft.Rows is not [.., { Name: "", Mass: "", Was: null }]) _draft.Rows.Add(new());
    }

    private void Remove(AboardDraft row)
    {
        _changed = _draft.Rows.Remove(row);
        KeepOneBlank();
    }

    private Fault? At(string path) => _faults.FirstOrDefault(f => f.Path == path);

    private string Draft(int row, string field) => $"aboard.{View.Build.Id}.{Condition}.{row}.{field}";

    private MassRef? MassOf(JsonObject was) => was["id"]?.GetValue<string>() is { } id ? MassRef.Aboard(Condition, id) : null;

    private static string MoveWord(JsonObject was) => was["at"] is null ? "Place it" : "Move it";

    private async Task Send()
    {
        var faults = new Faults();
        var body = _draft.Payload(faults);
        _faults = faults.List;
        if (body is null || _of is not { } begun || !OnState((Condition, body, begun.Seen))) return;
        await Forget();
    }

    private async Task Forget()
    {
        Begin();
        await Js.InvokeVoidAsync("desk.forgetAll", $"aboard.{View.Build.Id}.{Condition}.");
    }
}
