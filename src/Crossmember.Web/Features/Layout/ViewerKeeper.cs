namespace Crossmember.Web.Features.Layout;

/// <summary>Hands what somebody sets about themselves to the layout, which keeps it in the browser: the buttons in the head and the settings say the same.</summary>
public sealed record ViewerKeeper(Func<Viewer, Task> Keep)
{
    public static ViewerKeeper None { get; } = new(_ => Task.CompletedTask);
}
