using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text.RegularExpressions;

namespace BuildLog.Tui.Tests.Pty;

/// <summary>A program running in a terminal of its own, with the test at the keyboard.</summary>
internal sealed partial class TerminalProgram : IDisposable
{
    private readonly Process process;
    private readonly string settingsBefore;

    /// <param name="command">Program and arguments, such as dotnet, buildlog.dll, --demo.</param>
    /// <param name="environment">Variables to set; null removes one.</param>
    /// <param name="isItsOwn">Whether the terminal is the program's own; one that is not, as under su, tells it nothing when it goes.</param>
    public TerminalProgram(IEnumerable<string> command, int columns = 80, int rows = 24, IReadOnlyDictionary<string, string?>? environment = null, bool isItsOwn = true)
    {
        Terminal = new PseudoTerminal(columns, rows);
        settingsBefore = Terminal.LineSettings();

        // setsid -c makes the terminal the program's own, so that signals and hangups reach it as in real life;
        // env gives back what a test run has learned to ignore: the hangup under nohup, interrupt and quit in the background of a script.
        var quoted = string.Join(' ', command.Select(word => $"'{word}'"));
        var start = new ProcessStartInfo("/bin/sh") { ArgumentList = { "-c", $"exec env --default-signal=HUP,INT,QUIT setsid {(isItsOwn ? "-c " : "")}{quoted} <{Terminal.Name} >{Terminal.Name} 2>&1" } };
        start.Environment["TERM"] = "xterm-256color";
        foreach (var ours in new[] { "DisableRealDriverIO", "NO_COLOR", "COLORTERM" }) start.Environment.Remove(ours); // the test runner's, not the program's
        foreach (var (name, value) in environment ?? new Dictionary<string, string?>())
        {
            if (value is null) start.Environment.Remove(name);
            else start.Environment[name] = value;
        }

        process = Process.Start(start)!;
    }

    public PseudoTerminal Terminal { get; }

    public void Signal(PosixSignal signal)
    {
        var number = signal switch
        {
            PosixSignal.SIGHUP => 1,
            PosixSignal.SIGINT => 2,
            PosixSignal.SIGQUIT => 3,
            _ => 15,
        };
        if (Kill(process.Id, number) != 0) throw new Win32Exception(Marshal.GetLastPInvokeError());
    }

    /// <summary>Waits for the program to end: patiently, for other tests may keep the machine busy.</summary>
    /// <returns>Its exit code.</returns>
    public int WaitForExit(int seconds = 60)
    {
        Assert.True(process.WaitForExit(TimeSpan.FromSeconds(seconds)), $"The program was still running after {seconds} s.");
        return process.ExitCode;
    }

    /// <summary>After the end: the first screen is back, the cursor shows, the mouse is off, and the line is as it was before.</summary>
    public void AssertTerminalRestored()
    {
        Terminal.WaitFor("\e[?1049l", seconds: 5);
        var raw = Terminal.Raw;
        AssertLast(raw, on: "\e[?1049h", off: "\e[?1049l");
        AssertLast(raw, on: "\e[?25l", off: "\e[?25h");
        AssertLast(raw, on: "\e[?1003h", off: "\e[?1003l");
        AssertLast(raw, on: "\e[?1006h", off: "\e[?1006l");
        AssertLast(raw, on: "\e[?2004h", off: "\e[?2004l");
        Assert.DoesNotMatch(TitleSequence(), raw);
        Assert.Equal(settingsBefore, Terminal.LineSettings());
    }

    public void Dispose()
    {
        if (!process.HasExited) process.Kill(entireProcessTree: true);
        Terminal.Dispose();
        process.Dispose();
    }

    private static void AssertLast(string raw, string on, string off) =>
        Assert.True(raw.LastIndexOf(off, StringComparison.Ordinal) >= raw.LastIndexOf(on, StringComparison.Ordinal), $"{on[1..]} was not undone by {off[1..]}");

    [GeneratedRegex(@"\e\][02];")]
    private static partial Regex TitleSequence();

    [LibraryImport("libc", EntryPoint = "kill", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Kill(int pid, int signal);
}
