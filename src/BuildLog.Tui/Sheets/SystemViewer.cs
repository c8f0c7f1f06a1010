using System.ComponentModel;
using System.Diagnostics;

namespace BuildLog.Tui.Sheets;

/// <summary>Opens a written paper with whatever the system shows such files with.</summary>
public static class SystemViewer
{
    /// <returns>Null when it was opened; otherwise one sentence that says why not.</returns>
    public static string? Open(string path)
    {
        try
        {
            using var viewer = Process.Start(Start(path));
            return null;
        }
        catch (Exception none) when (none is Win32Exception or InvalidOperationException or FileNotFoundException)
        {
            return Refusal(path);
        }
    }

    /// <summary>The sentence for a machine that has no viewer.</summary>
    public static string Refusal(string path) => Spoken($"Nothing on this machine offers to open a PDF; {path} is written all the same.");

    private static ProcessStartInfo Start(string path)
    {
        if (OperatingSystem.IsWindows()) return new(path) { UseShellExecute = true };

        // Its chatter must not run into the screen.
        var start = new ProcessStartInfo(OperatingSystem.IsMacOS() ? "open" : "xdg-open") { RedirectStandardOutput = true, RedirectStandardError = true };
        start.ArgumentList.Add(path);
        return start;
    }
}
