using System.Diagnostics;

namespace BuildLog.Sheet.Tests.Reading;

/// <summary>A program of the machine, where it is installed.</summary>
internal static class Tool
{
    public static string? Path(string name) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
            .Select(folder => System.IO.Path.Combine(folder, name))
            .FirstOrDefault(File.Exists);

    /// <summary>What a program says and how it ends.</summary>
    public static (int Exit, string Said) Run(string program, params string[] arguments)
    {
        using var run = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var complaints = run.StandardError.ReadToEndAsync();
        var said = run.StandardOutput.ReadToEnd() + complaints.Result;
        run.WaitForExit();
        return (run.ExitCode, said);
    }
}
