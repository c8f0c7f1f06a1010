using BuildLog.Data;
using BuildLog.Data.Files;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Shell;
using BuildLog.Tui.WhatNow;
using Terminal.Gui.App;

namespace BuildLog.Tui.Workbench;

/// <summary>Opens the workbench in the terminal.</summary>
internal static class WorkbenchStart
{
    private static readonly TimeSpan LongestWait = TimeSpan.FromSeconds(12);

    /// <param name="acts">What its keys do.</param>
    /// <param name="pages">The pages below the strip.</param>
    /// <param name="log">Where errors are written in full.</param>
    /// <param name="pad">Where half-filled forms are kept.</param>
    /// <param name="meanwhile">Work to be done beside the screen; what it returns is said in the status line.</param>
    /// <param name="shop">The record they write to, beside other programs.</param>
    /// <param name="begun">The first page, as far as it is being read already.</param>
    /// <returns>The exit code: see <see cref="TerminalSession.Run"/>.</returns>
    public static int Run(IWorkbenchActs acts, Func<IReadOnlyList<VehiclePage>> pages, ErrorLog log, Scratchpad pad, Func<string?>? meanwhile = null, Shop? shop = null, ReadAhead<WhatNowRow>? begun = null)
    {
        var vehicles = begun ?? new(acts.WhatNow);
        return TerminalSession.Run(
            app =>
            {
                var screen = new WorkbenchScreen(acts, pages(), acts.OpenList()) { Pad = pad, ReadAlready = vehicles.Items };
                if (screen.Pad.Left is [_, ..] left) screen.Say(Spoken($"Left half filled, kept for you: {string.Join("; ", left)}. Open it again to go on."));
                screen.GoToWhatNow();
                screen.Take(vehicles.Found); // so that the first picture is of use already
                shop?.GoesOnWaiting = other => Wait(app, screen, other);
                if (meanwhile is not null) Task.Run(() => Say(app, screen, meanwhile()));
                return screen;
            },
            log);
    }

    /// <summary>Says that a change waits for another program, in the box that made it or in the status line, and goes on waiting for a while.</summary>
    /// <remarks>Whoever typed sees it although the change holds the screen's thread; past the longest wait the form stays as typed, with the refusal in it.</remarks>
    internal static bool Wait(IApplication app, WorkbenchScreen screen, OtherWriter other)
    {
        var goesOn = other.Waited < LongestWait;
        if (app.TopRunnableView is Popup box) box.SayMeanwhile(goesOn ? $"{other}" : "");
        else screen.Say($"{other}");
        app.LayoutAndDraw(true);
        return goesOn;
    }

    private static void Say(IApplication app, WorkbenchScreen screen, string? message)
    {
        if (message is not null) app.Invoke(() => screen.Say(message));
    }
}
