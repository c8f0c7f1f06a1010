using System.Text;
using Terminal.Gui.App;

namespace BuildLog.Tui.Shell;

/// <summary>The terminal's clipboard, reached by the control sequence OSC 52, over a remote line too. Terminals do not say whether they took it.</summary>
internal static class Clipboard
{
    public static void Put(IApplication app, string text)
        => app.Driver!.WriteRaw($"\e]52;c;{Convert.ToBase64String(Encoding.UTF8.GetBytes(text))}\a");
}
