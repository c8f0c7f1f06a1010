using System.Runtime.InteropServices;
using Terminal.Gui.App;

namespace BuildLog.Tui.Shell;

/// <summary>Leaves the terminal usable when the process is told to end, dies on another thread, or loses its terminal.</summary>
internal sealed partial class TerminalGuard : IDisposable
{
    // Keyboard protocol, bracketed paste, four mouse modes, colours, alternate screen, cursor: all back to what a shell expects.
    private const string Restore =
        "\e[<u\e[?2004l\e[?1003l\e[?1002l\e[?1000l\e[?1006l\e[?1015l\e[0m\e[?1049l\e[?25h";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    private readonly IApplication app;
    private readonly ErrorLog log;
    private readonly List<PosixSignalRegistration> signals = [];
    private int asked;
    private volatile bool isDying;

    public TerminalGuard(IApplication app, ErrorLog log)
    {
        this.app = app;
        this.log = log;
        foreach (var signal in new[] { PosixSignal.SIGTERM, PosixSignal.SIGHUP, PosixSignal.SIGINT, PosixSignal.SIGQUIT })
            signals.Add(PosixSignalRegistration.Create(signal, OnSignal));

        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
        AppDomain.CurrentDomain.ProcessExit += OnProcessExit;
        app.Iteration += DrawNoMore;
    }

    /// <summary>Exit code that tells the signal that ended the run; null while none has.</summary>
    public int? SignalExitCode { get; private set; }

    private bool HungUp { get; set; }

    public void Dispose()
    {
        AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
        AppDomain.CurrentDomain.ProcessExit -= OnProcessExit;
        app.Iteration -= DrawNoMore;
        foreach (var signal in signals) signal.Dispose();
    }

    /// <summary>Closes the application, which puts the terminal back.</summary>
    /// <remarks>After a hangup the library's input thread spins on the closed terminal and closing waits for it for ever,
    /// as does a normal exit; so the process gives it half a second and leaves at once.</remarks>
    public void Close()
    {
        if (HungUp)
        {
            Task.Run(app.Dispose).Wait(TimeSpan.FromMilliseconds(500));
            LeaveNow(SignalExitCode ?? 129);
        }

        app.Dispose();
    }

    private static int ExitCodeOf(PosixSignal signal) => 128 + signal switch
    {
        PosixSignal.SIGHUP => 1,
        PosixSignal.SIGINT => 2,
        PosixSignal.SIGQUIT => 3,
        _ => 15,
    };

    private static void WriteRestore()
    {
        Console.Out.Write(Restore);
        Console.Out.Flush();
    }

    private static void LeaveNow(int code)
    {
        if (OperatingSystem.IsWindows()) Environment.Exit(code);
        else ExitWithoutCleanup(code);
    }

    [LibraryImport("libc", EntryPoint = "_exit")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial void ExitWithoutCleanup(int code);

    // Unwinds every open box and the screen below it. A second signal, or one that comes too early, does what it always does.
    private void OnSignal(PosixSignalContext context)
    {
        if (Interlocked.Exchange(ref asked, 1) == 1 || !app.Initialized) return;

        context.Cancel = true;
        HungUp = context.Signal == PosixSignal.SIGHUP;
        SignalExitCode = ExitCodeOf(context.Signal);
        LeaveAfterPatience(SignalExitCode.Value);
        try
        {
            app.Invoke(StopEverything);
        }
        catch (NotInitializedException)
        {
            context.Cancel = false; // closed in the meantime: nothing is left to unwind
        }
    }

    private void StopEverything()
    {
        foreach (var session in app.SessionStack ?? [])
        {
            if (session.Runnable is { } runnable) runnable.StopRequested = true;
        }
    }

    // For a screen thread that no longer answers.
    private static void LeaveAfterPatience(int code)
    {
        var watchdog = new Thread(() =>
        {
            using var never = new ManualResetEventSlim();
            never.Wait(Patience);
            WriteRestore();
            LeaveNow(code);
        })
        { IsBackground = true };
        watchdog.Start();
    }

    // Environment.Exit from anywhere. Closing the application here deadlocks; the library restores the line settings itself.
    private void OnProcessExit(object? sender, EventArgs e)
    {
        if (app.Initialized) WriteRestore();
    }

    private void OnUnhandled(object? sender, UnhandledExceptionEventArgs e)
    {
        if (e.ExceptionObject is Exception error) log.Write(error);
        if (!app.Initialized) return;

        // The screen thread may be in the middle of a frame, which hides the cursor: it ends that one and begins no other.
        isDying = true;
        using var moment = new ManualResetEventSlim();
        moment.Wait(TimeSpan.FromMilliseconds(60));
        Task.Run(app.Dispose).Wait(TimeSpan.FromMilliseconds(500));
        WriteRestore();
    }

    private void DrawNoMore(object? sender, EventArgs<IApplication?> e)
    {
        if (isDying) Thread.Sleep(System.Threading.Timeout.Infinite);
    }
}
