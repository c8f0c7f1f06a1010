using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Workbench;

/// <summary>Draws a number's interval above the window that is wanted, in two lines to one scale.</summary>
internal static class WindowBarText
{
    private static string WantedCaption => Spoken("wanted  ");
    private static string NumberCaption => Spoken("number  ");

    public static IReadOnlyList<TextLine> Of(WindowBar bar, Tone tone, int width)
    {
        var cells = Math.Clamp(width - WantedCaption.Length, 10, 48);
        double[] marks = [bar.Low, bar.Value, bar.High, bar.WantedLow ?? bar.Low, bar.WantedHigh ?? bar.High];
        var span = marks.Max() - marks.Min();
        if (span <= 0) return [bar.Says];

        // A margin on both sides, so that an open side of the window has room to run out of the picture.
        var left = marks.Min() - (span * 0.12);
        var right = marks.Max() + (span * 0.12);
        int Cell(double x) => Math.Clamp((int)Math.Round((x - left) / (right - left) * (cells - 1)), 0, cells - 1);

        var wanted = Stretch(cells, bar.WantedLow is { } low ? Cell(low) : 0, bar.WantedHigh is { } high ? Cell(high) : cells - 1);
        if (bar.WantedLow is null) wanted[0] = '◄';
        if (bar.WantedHigh is null) wanted[^1] = '►';

        var number = Stretch(cells, Cell(bar.Low), Cell(bar.High));
        number[Cell(bar.Value)] = '●';
        return
        [
            TextLine.Of(new TextRun(NumberCaption, Tone.Quiet), new TextRun(new string(number).TrimEnd(), tone)),
            TextLine.Of(new TextRun(WantedCaption, Tone.Quiet), new TextRun(new string(wanted).TrimEnd(), Tone.Plain)),
            bar.Says,
        ];
    }

    private static char[] Stretch(int cells, int from, int to)
    {
        var line = new string(' ', cells).ToCharArray();
        for (var i = from; i <= to; i++) line[i] = '─';
        line[from] = '├';
        line[to] = '┤';
        return line;
    }
}
