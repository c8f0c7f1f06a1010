using System.Collections.Concurrent;
using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Terminal.Gui.App;
using Terminal.Gui.Drivers;

namespace BuildLog.Tui.Shell;

/// <summary>Waits for keys where the library looks every 20 ms whether there are any: a key is taken when it comes.</summary>
internal sealed partial class PromptInput : AnsiInput, IInput<char>
{
    private const int StandardInput = 0;
    private const short ToBeRead = 1;
    private const short InvalidHungUpOrInError = 0x20 | 0x10 | 0x8;
    private const int HangupSignal = 1;

    // As long as one wait may last, leaving may take.
    private const int LongestWait = 50;

    // A terminal that goes sends a hangup, which ends the program within three seconds. This is for one that was not its own, such as under su: nobody is told.
    private static readonly TimeSpan HangupDue = TimeSpan.FromSeconds(5);

    private readonly Stopwatch sinceHungUp = new();

    private ConcurrentQueue<char> taken = [];

    /// <summary>Makes an application use it that has not begun yet. Not on Windows, whose console waits otherwise.</summary>
    /// <remarks>The library takes another input only from its own tests: of its registry of drivers it reads no more than the names.</remarks>
    public static void GiveTo(IApplication app)
    {
#pragma warning disable CA2000 // The library disposes the input it is given.
        if (!OperatingSystem.IsWindows()) FactoryOf(app) = new AnsiComponentFactory(new PromptInput());
#pragma warning restore CA2000
    }

    void IInput<char>.Initialize(ConcurrentQueue<char> inputQueue) => Initialize(taken = inputQueue);

    // The library's own loop, without the rest that it takes after each look.
    void IInput<char>.Run(CancellationToken runCancellationToken)
    {
        while (!runCancellationToken.IsCancellationRequested)
        {
            while (Peek() && TakeAll())
            {
                // there may be more
            }

            if (!Wait()) runCancellationToken.WaitHandle.WaitOne(LongestWait);
        }
    }

    // A terminal that has gone has always something to be read, and it is nothing.
    private bool TakeAll()
    {
        var any = false;
        foreach (var character in Read())
        {
            taken.Enqueue(character);
            any = true;
        }

        return any;
    }

    // False where waiting is no use: interrupted, or hung up and so never quiet again.
    private bool Wait()
    {
        var waited = new Waited { Descriptor = StandardInput, Events = ToBeRead, Happened = 0 };
        var count = Poll(ref waited, 1, LongestWait);
        if (count > 0 && (waited.Happened & InvalidHungUpOrInError) != 0) HangUp();
        return count == 0 || waited.Happened == ToBeRead;
    }

    private void HangUp()
    {
        if (!sinceHungUp.IsRunning) sinceHungUp.Start();
        if (sinceHungUp.Elapsed < HangupDue) return;
        sinceHungUp.Restart();
        _ = Kill(Environment.ProcessId, HangupSignal);
    }

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "_componentFactory")]
    private static extern ref IComponentFactory? FactoryOf([UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")] object app);

    [LibraryImport("libc", EntryPoint = "kill")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Kill(int process, int signal);

    [LibraryImport("libc", EntryPoint = "poll")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Poll(ref Waited waited, nuint count, int milliseconds);

    [StructLayout(LayoutKind.Sequential)]
    private struct Waited
    {
        public int Descriptor;
        public short Events;
        public short Happened;
    }
}
