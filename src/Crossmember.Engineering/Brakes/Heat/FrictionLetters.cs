using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>The two letters at the end of the code on a lining's edge: friction warm and hot.</summary>
internal sealed class FrictionLetters : ITextNotation
{
    public string? Refuse(string text) =>
        FadeLine.Of(text, 1) is null ? $"must be two letters of {FadeLine.Letters}, first warm and then hot, for example FE" : null;
}
