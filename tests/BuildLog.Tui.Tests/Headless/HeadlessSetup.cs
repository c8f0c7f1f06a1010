using System.Runtime.CompilerServices;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Pty;
using Terminal.Gui.App;

namespace BuildLog.Tui.Tests.Headless;

/// <summary>What the library reads once per process, set before any test touches it.</summary>
internal static class HeadlessSetup
{
    [ModuleInitializer]
    internal static void Prepare()
    {
        if (Environment.GetCommandLineArgs() is [_, Trial.Word, ..]) return; // that one runs in a real terminal

        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");   // never the terminal the tests run in
        Environment.SetEnvironmentVariable("NO_COLOR", null);             // the look of a plain 16-colour terminal
        Environment.SetEnvironmentVariable("COLORTERM", null);
        Theme.Apply();                                                    // now, before a runner's own options change these again
        Application.MaximumIterationsPerSecond = 1000;                    // loops of open boxes really sleep in between
        ThreadPool.SetMinThreads(32, 32);                                 // every application keeps one pool thread for good
    }
}
