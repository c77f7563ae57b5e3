using Bunit;
using Crossmember.Web.Features.Decisions;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests.Starting;

/// <summary>Pages over an empty shop of their own, without a browser.</summary>
public abstract class StartingShop() : ShopPages(null)
{
    protected string Address => Nav.Uri;

    protected IRenderedComponent<T> Page<T>()
        where T : IComponent => Render<T>(p => p.AddCascadingValue(Ana));

    protected IRenderedComponent<DecisionsPage> Decisions(string build, string? item = null)
    {
        Nav.NavigateTo($"builds/{build}/decisions{(item is null ? "" : $"?item={item}")}");
        return Render<DecisionsPage>(p => p.Add(d => d.Id, build).AddCascadingValue(Ana));
    }
}
