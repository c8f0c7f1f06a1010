using System.Collections.Concurrent;
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

    // As long as one wait may last, leaving may take.
    private const int LongestWait = 50;

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
            while (Peek())
            {
                foreach (var character in Read()) taken.Enqueue(character);
            }

            if (!Wait()) runCancellationToken.WaitHandle.WaitOne(LongestWait);
        }
    }

    // False where waiting is no use: interrupted, or hung up and so never quiet again.
    private static bool Wait()
    {
        var waited = new Waited { Descriptor = StandardInput, Events = ToBeRead, Happened = 0 };
        return Poll(ref waited, 1, LongestWait) == 0 || waited.Happened == ToBeRead;
    }

    [UnsafeAccessor(UnsafeAccessorKind.Field, Name = "_componentFactory")]
    private static extern ref IComponentFactory? FactoryOf([UnsafeAccessorType("Terminal.Gui.App.ApplicationImpl, Terminal.Gui")] object app);

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
