using System.ComponentModel;
using System.Diagnostics;

namespace BuildLog.Endurance;

/// <summary>Programs of the system that prepare an ordeal.</summary>
internal static class Command
{
    /// <returns>Its exit code, or 127 where there is no such program, and what it said.</returns>
    public static (int Code, string Says) Run(string program, params string[] arguments)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = process.StandardError.ReadToEndAsync();
            var says = process.StandardOutput.ReadToEnd() + errors.Result;
            process.WaitForExit();
            return (process.ExitCode, says.Trim());
        }
        catch (Win32Exception missing)
        {
            return (127, missing.Message);
        }
    }

    public static void Must(string program, params string[] arguments)
    {
        if (Run(program, arguments) is var (code, says) && code != 0) throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {code}: {says}");
    }
}
