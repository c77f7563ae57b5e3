using System.Runtime.InteropServices;

namespace Crossmember.Cli;

/// <summary>What happens on Ctrl-C and on a request to end. Files are written whole and the journal in transactions, so a command may simply stop.</summary>
public sealed class Interruption : IDisposable
{
    private readonly PosixSignalRegistration[] _registrations;

    public Interruption() => _registrations = [On(PosixSignal.SIGINT), On(PosixSignal.SIGTERM)];

    /// <summary>Null: say so and end.</summary>
    public Action<PosixSignal>? Instead { get; set; }

    public void Dispose()
    {
        foreach (var r in _registrations) r.Dispose();
    }

    private PosixSignalRegistration On(PosixSignal signal) => PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = true;
        if (Instead is { } instead)
        {
            instead(signal);
            return;
        }
        Console.Error.WriteLine("crossmember: cancelled");
        Environment.Exit(Ending.EnvironmentCode);
    });
}
