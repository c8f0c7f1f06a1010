using Terminal.Gui.App;

namespace BuildLog.Tui.Workbench;

/// <summary>Copies a table: to the terminal's clipboard, or to a file.</summary>
internal static class TableCopy
{
    /// <param name="app">Whose clipboard.</param>
    /// <param name="view">Where it is asked and said.</param>
    /// <param name="table">The table in view.</param>
    /// <param name="fileName">Proposed for a file.</param>
    public static void Ask(IApplication app, IWorkbenchView view, TableText table, string fileName)
    {
        const string text = "text", csv = "csv", file = "file";
        switch (view.Choose(Spoken("Copy the table"), [new(text, Spoken("as text, to the terminal's clipboard")), new(csv, Spoken("as CSV, to the terminal's clipboard")), new(file, Spoken("to a file"))]))
        {
            case text:
                PutOnClipboard(app, view, table.ToText());
                break;
            case csv:
                PutOnClipboard(app, view, table.ToCsv());
                break;
            case file when view.Fill(CopyForm.For(table, fileName)):
                view.Say(Spoken("Written."));
                break;
        }
    }

    private static void PutOnClipboard(IApplication app, IWorkbenchView view, string text)
    {
        Shell.Clipboard.Put(app, text);
        view.Say(Spoken("Handed to the terminal's clipboard. Where the terminal does not take it, copy to a file."));
    }
}
