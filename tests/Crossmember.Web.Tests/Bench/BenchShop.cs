using System.Text.Json.Nodes;
using AngleSharp.Dom;
using Bunit;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Storage;
using Crossmember.Web.Features.Bench;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests.Bench;

/// <summary>Cards over a store of their own, worked as a person works them, without a browser.</summary>
public abstract class BenchShop() : ShopPages(Bracken.Json)
{
    public static TheoryData<string> Ids => [.. CalculationList.All.Select(c => c.Id)];

    /// <summary>What the address says under <c>input</c>, or nothing.</summary>
    protected string? Sent => System.Web.HttpUtility.ParseQueryString(new Uri(Nav.Uri).Query)["input"];

    protected static Viewer AnaIn(MeasureSystem measure) => Ana with { Measure = measure };

    protected IRenderedComponent<CardPage> Card(string calculation, string? input = null, MeasureSystem measure = MeasureSystem.UsCustomary)
    {
        Nav.NavigateTo(BenchAddress.Of(calculation, input));
        return Render<CardPage>(p => p.Add(c => c.Id, calculation).AddCascadingValue(AnaIn(measure)));
    }

    protected IRenderedComponent<BuildCardPage> BuildCard(string instance, string scenario = "working", string? tried = null, MeasureSystem measure = MeasureSystem.UsCustomary)
    {
        Nav.NavigateTo(BenchAddress.Of("bracken", scenario, instance, tried));
        return Render<BuildCardPage>(p => p.Add(c => c.Id, "bracken").Add(c => c.Instance, instance).AddCascadingValue(AnaIn(measure)));
    }

    /// <summary>Writes into a field and leaves it.</summary>
    protected static void Write(IRenderedComponent<IComponent> page, string field, string text)
    {
        page.Find(field).Input(text);
        page.Find(field).Change(text);
    }

    /// <summary>Writes what an example or a <c>calc run</c> is given into the fields of a card.</summary>
    protected static void FillIn(IRenderedComponent<CardPage> card, Calculation calculation, JsonObject inputs)
    {
        foreach (var (name, value) in inputs)
        {
            var spec = calculation.InputSpecs[calculation.InputIndex(name)];
            if (value is JsonObject members) foreach (var (member, text) in members) WriteMember(card, spec, member, (string)text!);
            else if (value is JsonArray points) Write(card, $"#in-{name}", string.Join('\n', points.Select(p => $"{p![0]}, {p[1]}")));
            else if (spec.About.OneOf.Length > 0) card.Find($"#in-{name}").Change((string)value!);
            else Write(card, $"#in-{name}", (string)value!);
        }
    }

    protected static IElement Output(IRenderedComponent<IComponent> page, string name) => page.Find($"[data-output='{name}'] data");

    protected static string Words(IElement e) => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static void WriteMember(IRenderedComponent<CardPage> card, InputSpec spec, string member, string text)
    {
        var at = Rows(card, spec).FindIndex(n => n == member);
        if (at < 0)
        {
            card.Find($"[data-input='{spec.Name}'] fieldset > button").Click();
            at = Rows(card, spec).Count - 1;
            Write(card, $"[data-input='{spec.Name}'] .member:nth-of-type({at + 1}) .name", member);
        }
        Write(card, $"#in-{spec.Name}-{at}", text);
    }

    private static List<string> Rows(IRenderedComponent<CardPage> card, InputSpec spec) =>
        [.. card.FindAll($"[data-input='{spec.Name}'] .member .name").Select(n => n.GetAttribute("value") ?? "")];
}
