using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Layout;

/// <summary>Who sits at the desk and how they read numbers; kept in the browser.</summary>
/// <param name="Known">False until the browser has told it.</param>
/// <param name="Asked">Whether the person has given a name, or chosen to stay the desk.</param>
public sealed record Viewer(string Person, string Device, MeasureSystem Measure, bool Known, bool Asked)
{
    public const string Desk = "desk";

    public static Viewer Unknown { get; } = new(Desk, "browser", MeasureSystem.UsCustomary, false, false);

    /// <summary>From what the browser keeps; anything missing or odd is as at the first visit.</summary>
    public static Viewer Of(Kept kept) => new(
        string.IsNullOrWhiteSpace(kept.Person) ? Desk : kept.Person.Trim(),
        string.IsNullOrWhiteSpace(kept.Device) ? "browser" : kept.Device,
        kept.Measure == "metric" ? MeasureSystem.Metric : MeasureSystem.UsCustomary,
        true, !string.IsNullOrWhiteSpace(kept.Person));

    /// <summary>As <c>desk.js</c> hands it over.</summary>
    public sealed record Kept(string? Person, string? Device, string? Measure);
}
