using Crossmember.Builds.Journal;
using Crossmember.Builds.Templates;
using Crossmember.Builds.Workshop;
using Crossmember.Storage.Rows;
using Crossmember.Web.Features.Layout;
using Crossmember.Web.Features.Writing;
using Microsoft.AspNetCore.Components;
using Microsoft.JSInterop;

namespace Crossmember.Web.Features.Starting;

/// <summary>A new build from a title alone: the rest is a template, a build that is here, or nothing.</summary>
public sealed partial class NewBuildPage
{
    private const string Here = "here";

    private string _title = "", _id = "", _model = "";
    private string _way = TemplateReader.Shipped[0].Id;
    private string? _wrong;
    private bool _ownId, _withOptions = true;
    private int _gears = 4, _ranges = 2;
    private IReadOnlyList<BuildRow> _here = [];
    private Pen? _pen;

    [Inject] private ShopDesk Desk { get; set; } = null!;

    [Inject] private NavigationManager Nav { get; set; } = null!;

    [Inject] private TimeProvider Clock { get; set; } = null!;

    [Inject] private IJSRuntime Js { get; set; } = null!;

    [CascadingParameter] public Viewer Viewer { get; set; } = Viewer.Unknown;

    private Pen Pen => _pen ??= new(Desk);

    /// <summary>Builds that are here, and streams of them: an id is never used again.</summary>
    private IEnumerable<string> Taken => _here.Select(b => b.Id);

    /// <summary>The id it will have.</summary>
    private string Chosen => _ownId && _id.Trim().Length > 0 ? _id.Trim() : NewId.Of(_title, Taken) ?? NewId.Free("build", Taken);

    protected override void OnInitialized()
    {
        _here = Desk.Builds();
        if (_here.Count > 0) _model = _here[0].Id;
    }

    protected override async Task OnAfterRenderAsync(bool firstRender)
    {
        if (firstRender && RendererInfo.IsInteractive) await Js.InvokeVoidAsync("desk.restore");
    }

    private void OwnId() => (_ownId, _id) = (true, Chosen);

    private async Task Send()
    {
        _here = Desk.Builds();
        if ((_wrong = Wrong()) is not null) return;
        var (id, title) = (Chosen, _title.Trim());
        if (!Pen.Write(Facts(id, title), () => "")) return;
        await Js.InvokeVoidAsync("desk.forget", "new-build");
        await Js.InvokeVoidAsync("desk.forget", "new-build.id");
        Nav.NavigateTo($"builds/{Uri.EscapeDataString(id)}/decisions");
    }

    private string? Wrong() =>
        _title.Trim().Length == 0 ? "The name is missing: write what people call the vehicle."
        : !NewId.IsBuild(Chosen) ? $"'{Chosen}' is no id: letters, digits, dots and dashes."
        : Taken.Contains(Chosen, StringComparer.Ordinal) ? $"There is a build '{Chosen}' already: {NewId.Free(Chosen, Taken)} is free."
        : null;

    private IReadOnlyList<Fact> Facts(string id, string title)
    {
        var starting = new StartingBuilds(Desk.Stating, Clock);
        var by = new Speaker(Viewer.Person, Viewer.Device);
        return _way == Here
            ? starting.FromBuild(Desk.Shop.Store.Journal.Store.Read(_model), _withOptions, id, title, by)
            : starting.FromTemplate(TemplateReader.Shipped.FirstOrDefault(t => t.Id == _way) ?? ItemTemplate.Empty, id, title, _gears, _ranges, by);
    }
}
