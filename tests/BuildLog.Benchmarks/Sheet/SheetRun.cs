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
        var (whole, layout, bare) = InTurn(() => BuildSheetWriter.Write(sheet, Stream.Null), () => Draw(sheet), () => PdfSharpRenderer.Save(drawn));
        Console.WriteLine(FormattableString.Invariant($"content to file     {whole,8:0.0} ms   {whole / bare:0.00} times the bare drawing"));
        Console.WriteLine(FormattableString.Invariant($"  its layout alone  {layout,8:0.0} ms"));
        Console.WriteLine(FormattableString.Invariant($"bare drawing        {bare,8:0.0} ms"));

        Console.WriteLine();
        foreach (var rows in new[] { 100, 200, 400, 800 })
        {
            var history = Sheets.WithHistory(rows);
            var time = Timing.Median([.. Enumerable.Range(0, LongRounds).Select(_ => Timing.ProcessorMilliseconds(() => BuildSheetWriter.Write(history, Stream.Null)))]);
            using var self = Process.GetCurrentProcess();
            Console.WriteLine(FormattableString.Invariant($"{rows,4} rows of history   {time,8:0} ms   {time / rows,6:0.00} ms a row   at most {self.PeakWorkingSet64 / 1048576} MiB so far"));
        }

        return 0;
    }

    private static DrawnDocument Draw(SheetContent sheet) => BuildSheet.Draw(sheet, Album.Of(sheet));

    // Turn by turn, so that a busy machine slows all alike; who comes first pays for the litter of the one before, so they change places.
    private static (double Whole, double Layout, double Bare) InTurn(params Action[] acts)
    {
        var times = acts.Select(_ => new List<double>()).ToArray();
        for (var round = 0; round < WarmUp + Rounds; round++)
        {
            for (var turn = 0; turn < acts.Length; turn++)
            {
                var who = (round + turn * (1 + round % 2)) % acts.Length;
                var time = Timing.ProcessorMilliseconds(acts[who]);
                if (round >= WarmUp) times[who].Add(time);
            }
        }

        return (Timing.Median(times[0]), Timing.Median(times[1]), Timing.Median(times[2]));
    }
}
