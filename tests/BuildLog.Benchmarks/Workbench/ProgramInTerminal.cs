using System.Diagnostics;
using BuildLog.Tui.Tests.Pty;

namespace BuildLog.Benchmarks.Workbench;

/// <summary>A program on a terminal of its own, with a stop watch that started when it did.</summary>
internal sealed class ProgramInTerminal : IDisposable
{
    private readonly Process process;
    private readonly Stopwatch sinceStart = Stopwatch.StartNew();

    public ProgramInTerminal(params string[] command)
    {
        Terminal = new PseudoTerminal(120, 36);
        var start = new ProcessStartInfo("/bin/sh") { ArgumentList = { "-c", $"exec setsid -c {string.Join(' ', command.Select(word => $"'{word}'"))} <{Terminal.Name} >{Terminal.Name} 2>&1" } };
        start.Environment["TERM"] = "xterm-256color";
        process = Process.Start(start)!;
    }

    public PseudoTerminal Terminal { get; }

    /// <summary>Seconds from the start until a text has been written.</summary>
    public double SecondsUntil(string text)
    {
        Terminal.WaitFor(text, seconds: 120);
        return sinceStart.Elapsed.TotalSeconds;
    }

    /// <summary>Milliseconds from a key until a text is written anew.</summary>
    public double MillisecondsFrom(string key, string text)
    {
        var before = Terminal.Raw.Length;
        var watch = Stopwatch.StartNew();
        Terminal.Send(key);
        Terminal.WaitFor(text, before);
        return watch.Elapsed.TotalMilliseconds;
    }

    /// <summary>Share of one core that it uses while nothing happens.</summary>
    public double IdleShare(TimeSpan during)
    {
        process.Refresh();
        var before = process.TotalProcessorTime;
        using var never = new ManualResetEventSlim();
        never.Wait(during);
        process.Refresh();
        return (process.TotalProcessorTime - before) / during;
    }

    /// <summary>Resident memory, MiB.</summary>
    public double Memory()
    {
        process.Refresh();
        return process.WorkingSet64 / 1024.0 / 1024.0;
    }

    public void Dispose()
    {
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        process.WaitForExit();
        process.Dispose();
        Terminal.Dispose();
    }
}
