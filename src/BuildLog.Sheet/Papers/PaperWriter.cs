using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Papers.Accounts;
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
    public static SheetResult WriteFile(PaperContent content, string path, bool overwrite = false)
    {
        var target = WholeFile.At(path, overwrite);
        var file = PdfFile.Of(Draw(content), []);
        target.Write(stream => stream.Write(file.Bytes));
        return file.Result;
    }

    public static SheetResult Write(PaperContent content, Stream output)
    {
        var file = PdfFile.Of(Draw(content), []);
        output.Write(file.Bytes);
        return file.Result;
    }

    /// <summary>The same pages as text, lines no longer than asked.</summary>
    public static SheetPreview Preview(PaperContent content, int width = 78)
    {
        var document = Draw(content);
        return new SheetPreview(PageAsText.Of(document, width), MissingSign.In(document), []);
    }

    internal static DrawnDocument Draw(PaperContent content) => content switch
    {
        PropshaftOrder order => PropshaftOrderPaper.Draw(order),
        SessionRecord session => SessionRecordPaper.Draw(session),
        OptionsCompared options => OptionsComparedPaper.Draw(options),
        TimeSheet time => TimeSheetPaper.Draw(time),
        CostSheet costs => CostSheetPaper.Draw(costs),
        ShelfLabels labels => ShelfLabelsPaper.Draw(labels),
        _ => throw new ArgumentException($"There is no paper for {content.GetType().Name}.", nameof(content)),
    };
}
