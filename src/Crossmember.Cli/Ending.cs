using System.Text.Json.Nodes;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Cli;

/// <summary>The one place where an outcome becomes output and an exit code.</summary>
internal static class Ending
{
    public const int FailsCode = 1, FaultCode = 2, EnvironmentCode = 3;

    private const string Self = "crossmember";

    public static int Of(Outcome outcome, Terminal terminal)
    {
        var code = Tell(outcome, terminal);
        terminal.Out.Flush();
        return code;
    }

    private static int Tell(Outcome outcome, Terminal terminal)
    {
        switch (outcome)
        {
            case Outcome.Result result:
                if (terminal.Json) terminal.Out.WriteLine(Json.Text(result.Json()));
                else result.Text(terminal.Out);
                return result.Fails ? FailsCode : 0;
            case Outcome.Refused refused:
                foreach (var line in refused.Told) terminal.Say(line);
                foreach (var fault in refused.Faults) terminal.Say(fault.ToString());
                if (terminal.Json) terminal.Out.WriteLine(Json.Text(Faults(refused.Faults)));
                return FaultCode;
            case Outcome.Misused misused:
                terminal.Say($"{Self}: {misused.Wrong}; {misused.Right}");
                if (terminal.Json) terminal.Out.WriteLine(Json.Text(Faults([new(Self, new("", misused.Wrong, misused.Right))])));
                return FaultCode;
            case Outcome.Stopped stopped:
                terminal.Say($"{Self}: {stopped.Why}");
                return EnvironmentCode;
            case Outcome.Forwarded forwarded:
                return forwarded.ExitCode;
            default:
                return 0;
        }
    }

    private static JsonObject Faults(IReadOnlyList<FileFault> faults) => new()
    {
        ["format"] = "crossmember.faults/1",
        ["faults"] = Json.List(faults, f => new JsonObject { ["file"] = f.File, ["path"] = f.Fault.Path, ["wrong"] = f.Fault.Wrong, ["right"] = f.Fault.Right }),
    };
}
