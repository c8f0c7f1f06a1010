using System.Text.Json;
using BuildLog.Tui.Commands;

namespace BuildLog.Tui.Tests.Commands;

/// <summary>A command run as a program would run it: through the front door, with what it printed and its exit code.</summary>
internal sealed record Said(int ExitCode, string Output, string Errors)
{
    public JsonElement Json => JsonDocument.Parse(Output).RootElement;

    public JsonElement Error => JsonDocument.Parse(Errors).RootElement.GetProperty("error");

    public static Said By(params string[] arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var exitCode = CommandLine.Run(arguments, output, () => errors, TimeProvider.System);
        return new(exitCode, output.ToString(), errors.ToString());
    }

    public double Number(string field) => Json.GetProperty(field).GetDouble();
}
