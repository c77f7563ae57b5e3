using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.Bench;

/// <summary>An instance of a build with some of its inputs tried otherwise.</summary>
public static class TriedInstance
{
    /// <summary>The build's own arguments, where nothing else is typed.</summary>
    /// <param name="read">What was read from the form.</param>
    public static Value[] Arguments(InstanceState state, IReadOnlyList<SheetInput> inputs, TypedInputs typed, IReadOnlyList<Value> read)
    {
        Value[] arguments = [.. state.Inputs];
        for (var i = 0; i < arguments.Length; i++)
            if (typed.Has(inputs[i].Spec.Name)) arguments[i] = read[i].Members is { } members ? Mixed(inputs[i], members) : read[i];
        return arguments;
    }

    /// <summary>Of a map only some members are tried; where one is then still missing, the whole is, as in the sheet.</summary>
    private static Value Mixed(SheetInput input, Members tried)
    {
        if (!input.IsMap) return Value.Of(tried);
        var known = tried.Items.ToDictionary(m => m.Name, m => m.Value, StringComparer.Ordinal);
        var all = new Members(input.Readings.Select(r => (r.Member, known.GetValueOrDefault(r.Member, r.Value))));
        return all.Complete ? Value.Of(all) : default;
    }
}
