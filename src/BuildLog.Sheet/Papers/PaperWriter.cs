using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Papers.Accounts;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Sheet.Papers.Comparisons;
using BuildLog.Sheet.Papers.Labels;
using BuildLog.Sheet.Papers.Orders;
using BuildLog.Sheet.Papers.Sessions;
using BuildLog.Sheet.Preview;

namespace BuildLog.Sheet.Papers;

/// <summary>The door for all papers but the build sheet: content in, PDF out. The same content gives the same bytes.</summary>
public static class PaperWriter
{
    /// <summary>Writes to a path: the whole file or nothing.</summary>
    /// <exception cref="SheetWriteException">The path cannot be written, or a file is there and may not be overwritten.</exception>
    public static SheetResult WriteFile(PaperContent content, string path, bool overwrite = false) => PdfFile.Write(path, overwrite, () => Make(content));

    public static SheetResult Write(PaperContent content, Stream output) => Make(content).WriteTo(output);

    /// <summary>The same pages as text, to be laid at any width.</summary>
    public static SheetPreview Preview(PaperContent content) => SheetPreview.Of(Draw(content), []);

    private static PdfFile Make(PaperContent content) => PdfFile.Of(Draw(content), []);

    internal static DrawnDocument Draw(PaperContent content) => content switch
    {
        PropshaftOrder order => PropshaftOrderPaper.Draw(order),
        SessionRecord session => SessionRecordPaper.Draw(session),
        OptionsCompared options => OptionsComparedPaper.Draw(options),
        TimeSheet time => TimeSheetPaper.Draw(time),
        CostSheet costs => CostSheetPaper.Draw(costs),
        ShelfLabels labels => ShelfLabelsPaper.Draw(labels),
        YardCard card => YardCardPaper.Draw(card),
        _ => throw new ArgumentException($"There is no paper for {content.GetType().Name}.", nameof(content)),
    };
}
