using System.Runtime.CompilerServices;
using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.Endurance.CutOff;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Headless;
using BuildLog.Tui.Workbench;
using Terminal.Gui.App;

namespace BuildLog.Endurance.Workbench;

/// <summary>The workbench on a copy of the demo shop, with its screen in memory and its clocks in our hand.</summary>
internal sealed class Bench : IDisposable
{
    private readonly string before = Environment.CurrentDirectory;
    private readonly WorkbenchScreen workbench;

    public Bench()
    {
        Records.Demo.LayIn(Folder);

        // What is written without a folder named goes here, and no viewer is found to be started.
        Environment.CurrentDirectory = Folder;
        Environment.SetEnvironmentVariable("PATH", Folder);
        Screen = new HeadlessScreen();
        Shop = ShopFile.Open(Records.In(Folder), Clock);
        var (pad, forNow) = (Scratchpad.Beside(Shop.Path), new ForNow());
        var acts = new WorkbenchActs(Shop, Clock, UnitSystem.Metric, null, pad, forNow);
        workbench = new WorkbenchScreen(acts, BenchPages.All(Shop, Clock, forNow), acts.OpenList()) { Pad = pad };
        workbench.GoToWhatNow();
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("buildlog-bench-").FullName;

    public WallClock Clock { get; } = new();

    public HeadlessScreen Screen { get; }

    public Shop Shop { get; }

    /// <summary>Set before the library is touched for the first time.</summary>
    [ModuleInitializer]
    internal static void Prepare()
    {
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
        Application.MaximumIterationsPerSecond = 1000;
    }

    /// <summary>Runs the real loop; at each turn of it something is done, until that says it is enough.</summary>
    /// <param name="turn">False when it is enough.</param>
    /// <param name="onError">What came out of the loop.</param>
    public void Run(Func<bool> turn, Action<Exception> onError)
    {
        Theme.Apply();
        ThreadPool.SetMinThreads(32, 32);
        var goesOn = true;
        void Turn(object? sender, EventArgs<IApplication?> e)
        {
            // A key that opens a box is not done before the box is: turns stand in one another.
            if (goesOn && !turn()) goesOn = false;
            if (!goesOn) Screen.App.RequestStop();
        }

        Screen.App.Iteration += Turn;
        try
        {
            while (goesOn)
            {
                Screen.App.Run(workbench, error =>
                {
                    onError(error);
                    return true;
                });
            }
        }
        finally
        {
            Screen.App.Iteration -= Turn;
        }
    }

    public void Dispose()
    {
        workbench.Dispose();
        Screen.Dispose();
        Shop.Dispose();
        Environment.CurrentDirectory = before;
        Directory.Delete(Folder, recursive: true);
    }
}
