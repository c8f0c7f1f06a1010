using System.ComponentModel;
using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;
using Microsoft.Win32.SafeHandles;

namespace BuildLog.Tui.Tests.Pty;

/// <summary>A terminal made by the operating system, with the test at the side where the screen and the keyboard would be.</summary>
internal sealed partial class PseudoTerminal : IDisposable
{
    private const int ReadWrite = 2;
    private const int NotOurControllingTerminal = 0x100;
    private const int NotForOurChildren = 0x80000; // a child that held this side too would keep its own terminal open for ever
    private const nuint SetWindowSize = 0x5414;
    private readonly SafeFileHandle screenSide;
    private readonly SafeFileHandle programSide; // held open, so that the line settings outlive the program
    private readonly FileStream stream;
    private readonly StringBuilder shown = new();
    private readonly object gate = new();

    public PseudoTerminal(int columns, int rows)
    {
        screenSide = new SafeFileHandle(Checked(OpenMaster(ReadWrite | NotOurControllingTerminal | NotForOurChildren)), ownsHandle: true);
        var fd = screenSide.DangerousGetHandle();
        Checked(Grant(fd));
        Checked(Unlock(fd));
        Name = Marshal.PtrToStringUTF8(SlaveName(fd))!;
        programSide = File.OpenHandle(Name, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        stream = new FileStream(screenSide, FileAccess.ReadWrite, bufferSize: 0);
        Resize(columns, rows);
        new Thread(Pump) { IsBackground = true, Name = "terminal screen" }.Start();
    }

    /// <summary>The device a program opens to be on this terminal.</summary>
    public string Name { get; }

    /// <summary>Everything the program has written, with its control sequences.</summary>
    public string Raw
    {
        get
        {
            lock (gate) return shown.ToString();
        }
    }

    public unsafe void Resize(int columns, int rows)
    {
        var size = stackalloc ushort[] { (ushort)rows, (ushort)columns, 0, 0 };
        Checked(Control(screenSide.DangerousGetHandle(), SetWindowSize, size));
    }

    public void Send(string keys) => stream.Write(Encoding.UTF8.GetBytes(keys));

    /// <summary>Esc, and the pause that makes it a key of its own: what follows at once would be read as one sequence with it.</summary>
    public void SendEsc()
    {
        Send("\e");
        using var never = new ManualResetEventSlim();
        never.Wait(TimeSpan.FromMilliseconds(300));
    }

    /// <summary>Waits until a text has been written after a place in the output.</summary>
    /// <returns>The place after the text.</returns>
    public int WaitFor(string text, int after = 0, int seconds = 30)
    {
        var until = Stopwatch.StartNew();
        lock (gate)
        {
            while (true)
            {
                var at = shown.ToString().IndexOf(text, Math.Min(after, shown.Length), StringComparison.Ordinal);
                if (at >= 0) return at + text.Length;
                var left = TimeSpan.FromSeconds(seconds) - until.Elapsed;
                if (left <= TimeSpan.Zero || !Monitor.Wait(gate, left)) throw new TimeoutException($"“{text}” was not written within {seconds} s. The end of the output is:\n{Printable(800)}");
            }
        }
    }

    /// <summary>The line settings: canonical mode, echo, signals and the rest, as stty prints them.</summary>
    public string LineSettings()
    {
        var stty = new ProcessStartInfo("stty") { RedirectStandardOutput = true };
        foreach (var argument in new[] { "-a", "-F", Name }) stty.ArgumentList.Add(argument);
        using var process = Process.Start(stty)!;
        var settings = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return settings;
    }

    /// <summary>Closes the terminal as a window manager does: the program on it is hung up on.</summary>
    public void Close()
    {
        programSide.Dispose();
        stream.Dispose();
        screenSide.Dispose();
    }

    public void Dispose() => Close();

    private static nint Checked(nint result) => result >= 0 ? result : throw new Win32Exception(Marshal.GetLastPInvokeError());

    private string Printable(int count)
    {
        var all = shown.ToString();
        return all[Math.Max(0, all.Length - count)..].Replace("\e", "\\e", StringComparison.Ordinal);
    }

    private void Pump()
    {
        var decoder = Encoding.UTF8.GetDecoder();
        var bytes = new byte[65536];
        var chars = new char[65536];
        try
        {
            while (stream.Read(bytes) is > 0 and var count)
            {
                var length = decoder.GetChars(bytes, 0, count, chars, 0);
                lock (gate)
                {
                    shown.Append(chars, 0, length);
                    Monitor.PulseAll(gate);
                }
            }
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException or UnauthorizedAccessException)
        {
            // The terminal was closed: nothing more will be shown.
            return;
        }
    }

    [LibraryImport("libc", EntryPoint = "posix_openpt", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int OpenMaster(int flags);

    [LibraryImport("libc", EntryPoint = "grantpt", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Grant(nint fd);

    [LibraryImport("libc", EntryPoint = "unlockpt", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Unlock(nint fd);

    [LibraryImport("libc", EntryPoint = "ptsname", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial nint SlaveName(nint fd);

    [LibraryImport("libc", EntryPoint = "ioctl", SetLastError = true)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static unsafe partial int Control(nint fd, nuint request, ushort* size);
}
