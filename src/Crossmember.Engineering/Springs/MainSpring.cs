using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Springs;

/// <summary>A load on a main spring of which a helper of unknown gap may take a part.</summary>
/// <remarks>The helper touches no earlier than at the unloaded spring; from there both share by their rates. docs/derivations/springs.md.</remarks>
/// <param name="Told">All of it on the main spring, kg.</param>
/// <param name="Helper">Rate of a helper whose share is not known; null where there is none, or where it is taken off already.</param>
/// <param name="Rate">Rate of the main spring; null where not known.</param>
internal readonly record struct MainSpring(double Told, double? Helper, double? Rate)
{
    public bool Shared => Helper is not null;

    /// <summary>The least that a helper can leave to the main spring, kg.</summary>
    public double Least => Helper is not { } helper ? Told : Rate is { } k ? Told * k / (k + helper) : 0;

    /// <summary>What lies beyond a limit: no answer while the helper may have taken enough, else a fail.</summary>
    public Verdict Beyond(double limit) => Shared && Least <= limit ? Verdict.Unknown : Verdict.Fail;

    /// <summary>What to measure, to be put behind a finding.</summary>
    public string Says => Shared ? $" A helper takes part of it, at most {Told - Least:0} kg: tape the gap until it touches, and the height with its load." : "";
}
