using System.Diagnostics;
using BuildLog.Sheet;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Drawing;
using BuildLog.Sheet.Pdf;
using BuildLog.Sheet.Photos;
using BuildLog.Sheet.Tests.Samples;

namespace BuildLog.Benchmarks.Sheet;

/// <summary><c>-- sheet</c>: a build sheet from content to file beside the bare drawing of the same operations, and how it grows with its history.</summary>
internal static class SheetRun
{
    private const int Rounds = 60;
    private const int WarmUp = 80;
    private const int LongRounds = 8;

    // As many swaps as make the sample four pages.
    private const int SwapsOfFourPages = 25;

    public static int Print()
    {
        var sheet = Sheets.WithHistory(SwapsOfFourPages) with { Reader = SheetReader.Own };
        var drawn = Draw(sheet);
        Console.WriteLine(FormattableString.Invariant($"{drawn.Pages.Count} pages, {drawn.Pages.Sum(page => page.Operations.Count):N0} operations; {Rounds} rounds warm, medians of processor time"));
        var saved = PdfSharpRenderer.Save(drawn);
        var times = InTurn(
            () => BuildSheetWriter.Write(sheet, Stream.Null),
            () => Draw(sheet),
            () => PdfFinisher.Finish(saved, drawn.Info),
            () => PdfSharpRenderer.Save(drawn, packed: true));
        foreach (var (name, time) in new[] { "content to file", "  its layout", "  its finishing", "bare drawing" }.Zip(times))
            Console.WriteLine(FormattableString.Invariant($"{name,-16} {time,8:0.0} ms   {time / times[^1]:0.00} times the bare drawing"));

        Console.WriteLine();
        foreach (var rows in new[] { 100, 200, 400, 800 })
        {
            var history = Sheets.WithHistory(rows);
            var time = Timing.Median([.. Enumerable.Range(0, LongRounds).Select(_ => Swept(() => BuildSheetWriter.Write(history, Stream.Null)))]);
            using var self = Process.GetCurrentProcess();
            Console.WriteLine(FormattableString.Invariant($"{rows,4} rows of history   {time,8:0} ms   {time / rows,6:0.00} ms a row   at most {self.PeakWorkingSet64 / 1048576} MiB so far"));
        }

        return 0;
    }

    private static DrawnDocument Draw(SheetContent sheet) => BuildSheet.Draw(sheet, Album.Of(sheet));

    // Turn by turn, so that a busy machine slows all alike.
    private static double[] InTurn(params Action[] acts)
    {
        var times = acts.Select(_ => new List<double>()).ToArray();
        for (var round = 0; round < WarmUp + Rounds; round++)
        {
            for (var turn = 0; turn < acts.Length; turn++)
            {
                var time = Swept(acts[turn]);
                if (round >= WarmUp) times[turn].Add(time);
            }
        }

        return [.. times.Select(Timing.Median)];
    }

    // From a swept floor: nobody pays for the litter of the one before.
    private static double Swept(Action act)
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        return Timing.ProcessorMilliseconds(act);
    }
}
