using System.Runtime.CompilerServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Shell;

/// <summary>Starts the screen, runs it, and leaves the terminal as it was found.</summary>
public static class TerminalSession
{
    /// <summary>Exit code when there is no terminal to show anything on.</summary>
    public const int NoTerminal = 2;

    private static readonly Lazy<Task> Ready = new(() =>
    {
        // The library's input loop keeps one pool thread for good; on two cores the pool would start with only two.
        ThreadPool.SetMinThreads(8, 8);
        return Task.Run(MakeReady);
    });

    /// <summary>Begins to load what a screen needs, beside whatever else has to be done before there is one.</summary>
    public static void Prepare() => _ = Ready.Value;

    /// <summary>Waits until it is loaded.</summary>
    public static void Await() => Ready.Value.GetAwaiter().GetResult();

    /// <summary>Runs one screen until it is left.</summary>
    /// <param name="makeScreen">Makes the screen once the terminal is ready.</param>
    /// <param name="log">Where errors are written in full.</param>
    /// <returns>0, 2 without a terminal, or 128 + the signal that ended it.</returns>
    public static int Run(Func<IApplication, Runnable> makeScreen, ErrorLog log)
    {
        if (!Driver.IsAttachedToTerminal(out _, out _))
        {
            Console.Error.WriteLine(Spoken("The workbench needs a terminal on standard input and output. For use in scripts see: buildlog --help"));
            return NoTerminal;
        }

        Await();
        var app = Application.Create();
        using var guard = new TerminalGuard(app, log);
        try
        {
            PromptInput.GiveTo(app);
            app.Init();
            Theme.ApplyTo(app);
            ApplyKeysTo(app);
            using var screen = makeScreen(app);
            app.Run(screen, error => Report(app, log, error));
        }
        finally
        {
            guard.Close();
        }

        return guard.SignalExitCode ?? 0;
    }

    // The first method that names the library waits while it loads.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void MakeReady()
    {
        Application.MaximumIterationsPerSecond = 100; // the default of 25 adds up to 40 ms to every key
        Characters.AreAscii = Characters.AsciiIn(Environment.GetEnvironmentVariable);
        Theme.Apply();
    }

    /// <summary>Ctrl+Q quits everywhere; arrow keys that a view does not use do nothing, where the library would move the focus.</summary>
    internal static void ApplyKeysTo(IApplication app)
    {
        app.Keyboard.KeyBindings.Add(Key.Q.WithCtrl, Command.Quit);
        foreach (var arrow in new[] { Key.CursorUp, Key.CursorDown, Key.CursorLeft, Key.CursorRight }) app.Keyboard.KeyBindings.Remove(arrow);
        KeptKeys.ApplyTo(app);
    }

    /// <summary>Turns an error into a sentence on screen and an entry in the log; the run goes on.</summary>
    internal static bool Report(IApplication app, ErrorLog log, Exception error)
    {
        var written = log.Write(error);
        Reader.Show(
            app,
            Spoken("Something went wrong"),
            [
                TextLine.Of(error.Message),
                TextLine.Empty,
                Spoken("Nothing that was saved before is lost. You can go on working."),
                written ? Spoken($"The details are in {log.Path}") : Spoken($"The details could not be written to {log.Path}"),
            ]);
        return true;
    }
}
