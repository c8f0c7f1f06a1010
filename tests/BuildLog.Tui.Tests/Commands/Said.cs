using System.Text.Json;
using BuildLog.Tui.Commands;

namespace BuildLog.Tui.Tests.Commands;

/// <summary>A command run as a program would run it: through the front door, with what it printed and its exit code.</summary>
internal sealed record Said(int ExitCode, string Output, string Errors)
{
    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    public JsonElement Error => JsonDocument.Parse(Errors).RootElement.GetProperty("error");

    /// <summary>On a machine that names no language.</summary>
    public static Said By(params string[] arguments) => On(_ => null, arguments);

    /// <summary>In Dutch, as on a machine whose language that is.</summary>
    public static Said InDutch(params string[] arguments) => On(name => name == "LANG" ? "nl_NL.UTF-8" : null, arguments);

    public static Said On(Func<string, string?> machine, params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var exitCode = CommandLine.Run(arguments, output, () => errors, TimeProvider.System, machine);
        return new(exitCode, output.ToString(), errors.ToString());
    }

    public double Number(string field) => Json.GetProperty(field).GetDouble();
}
