using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Papers;

/// <summary>Asks to which file and on which paper something is printed that needs no more said.</summary>
internal static class PrintForm
{
    public static IReadOnlyList<ChoiceOption> WholePages => [new(nameof(Paper.A4), "A4"), new(nameof(Paper.Letter), Spoken("Letter"))];

    public static IReadOnlyList<ChoiceOption> Pocket => [new(nameof(Paper.A6), "A6"), new(nameof(Paper.HalfLetter), Spoken("half a letter"))];

    /// <param name="title">What stands above.</param>
    /// <param name="help">The help page.</param>
    /// <param name="file">The name proposed.</param>
    /// <param name="papers">On what it may be printed, the usual one first.</param>
    /// <param name="write">Writes it.</param>
    /// <param name="said">Hears what was written.</param>
    public static Form For(string title, string help, string file, IReadOnlyList<ChoiceOption> papers, Func<Paper, string, SheetResult> write, Action<string> said) => new()
    {
        Title = title,
        HelpPage = help,
        SaveCaption = Spoken("Write"),
        Entries =
        [
            new TextEntry("file", Spoken("File")) { Initial = file, Hint = Spoken("a PDF; a bare name goes to the folder you started in"), Check = Checks.Needed("file", SheetFile.Read) },
            new ChoiceEntry("paper", Spoken("Paper"), papers) { Initial = papers[0].Value },
        ],
        Save = values =>
        {
            try
            {
                var path = SheetFile.Read(values["file"]).OrRefuse();
                said(SheetForm.InWords(path, write(Enum.Parse<Paper>(values["paper"]), path)));
                return SaveOutcome.Done;
            }
            catch (SheetWriteException refused)
            {
                return SaveOutcome.Refuse("file", refused.Message);
            }
        },
    };
}
