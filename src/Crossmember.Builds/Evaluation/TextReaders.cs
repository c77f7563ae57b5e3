using Crossmember.Builds.Parameters;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>Whether the calculations that read a text can make anything of it. A text is recorded as it is written on the part all the same: that nothing can read it is worth a word.</summary>
public static class TextReaders
{
    /// <summary>Why a text says nothing to those that read it, as the end of a sentence; null where it does, or where nothing reads it.</summary>
    public static string? Refuse(Catalogue catalogue, ParameterPattern pattern, string text)
    {
        if (pattern.Form != Form.Text) return null;
        var stars = Stars(pattern.Text);
        var refusals = catalogue.Bindings.SelectMany(b => b.Inputs.Where(i => Stars(i.Value) == stars).Select(i => b.Calculation.InputSpecs[b.Calculation.InputIndex(i.Key)].Outside(text.Trim()))).ToList();
        return refusals.Count > 0 && refusals.TrueForAll(r => r is not null) ? refusals[0] : null;
    }

    private static string Stars(string pattern) => string.Join('.', pattern.Split('.').Select(s => s.StartsWith('{') ? "*" : s));
}
