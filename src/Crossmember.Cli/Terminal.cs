namespace Crossmember.Cli;

/// <summary>Where a command reads and writes.</summary>
/// <param name="Json">Whether the machine-readable result is wanted: then standard output holds nothing else.</param>
internal sealed record Terminal(TextWriter Out, TextWriter Error, Stream In, bool Json, Interruption? Interruption)
{
    /// <summary>A message for a person, beside the result.</summary>
    public void Say(string message) => Error.WriteLine(message);
}
