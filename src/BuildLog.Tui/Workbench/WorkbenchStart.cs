using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>Opens the workbench in the terminal.</summary>
public static class WorkbenchStart
{
    /// <returns>The exit code: see <see cref="TerminalSession.Run"/>.</returns>
    public static int Run(IWorkbenchActs acts, ErrorLog log) => TerminalSession.Run(_ => new WorkbenchScreen(acts), log);
}
