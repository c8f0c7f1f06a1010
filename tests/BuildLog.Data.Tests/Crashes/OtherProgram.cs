using System.Diagnostics;

namespace BuildLog.Data.Tests.Crashes;

/// <summary>These tests' own executable as another program.</summary>
internal sealed class OtherProgram : IDisposable
{
    private readonly Process process;

    public OtherProgram(params IEnumerable<string> arguments) : this("dotnet", [.. Command, .. arguments]) { }

    private OtherProgram(string program, IReadOnlyList<string> arguments)
    {
        var start = new ProcessStartInfo(program) { RedirectStandardOutput = true };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        process = Process.Start(start)!;
    }

    private static string[] Command => ["exec", typeof(OtherProgram).Assembly.Location];

    /// <summary>Runs where a small disk of its own is mounted, without any right on this machine but to make such a room for itself.</summary>
    /// <param name="prepare">Shell words that make the disk; the folder is $1.</param>
    /// <returns>What it said; null where this machine does not allow such rooms.</returns>
    public static IReadOnlyList<string>? InARoomOfItsOwn(string prepare, string folder, string word)
    {
        if (!OperatingSystem.IsLinux() || !IsAllowed(folder)) return null;
        var line = $"{prepare} && exec dotnet exec '{typeof(OtherProgram).Assembly.Location}' {word} \"$1\"";
        using var program = new OtherProgram("unshare", ["--user", "--map-root-user", "--mount", "sh", "-c", line, "sh", folder]);
        var said = program.ReadToEnd();
        return program.ExitCode == 0 ? said : throw new InvalidOperationException($"It ended with {program.ExitCode} after: {string.Join(" | ", said)}");
    }

    public int ExitCode
    {
        get
        {
            process.WaitForExit();
            return process.ExitCode;
        }
    }

    public string? ReadLine() => process.StandardOutput.ReadLine();

    public IReadOnlyList<string> ReadToEnd() => process.StandardOutput.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>As kill -9 does: it cannot do anything about it.</summary>
    public void Kill() => process.Kill();

    public void Dispose()
    {
        if (!process.HasExited) process.Kill();
        process.Dispose();
    }

    private static bool IsAllowed(string folder)
    {
        try
        {
            using var trial = new OtherProgram("unshare", ["--user", "--map-root-user", "--mount", "mount", "-t", "tmpfs", "tmpfs", folder]);
            return trial.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
