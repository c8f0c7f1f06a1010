using System.Globalization;

namespace BuildLog.Tui.Measurements;

/// <summary>Digits to be read from under a vehicle: five rows high, or a multiple of that.</summary>
public static class BigDigits
{
    public const int Height = 5;
    private const int Width = 4;

    private static readonly string[] Shapes =
    [
        "####|#  #|#  #|#  #|####",
        "  # | ## |  # |  # | ###",
        "####|   #|####|#   |####",
        "####|   #| ###|   #|####",
        "#  #|#  #|####|   #|   #",
        "####|#   |####|   #|####",
        "####|#   |####|#  #|####",
        "####|   #|  # |  # |  # ",
        "####|#  #|####|#  #|####",
        "####|#  #|####|   #|####",
    ];

    /// <summary>The largest size whose digits fit, at least 1.</summary>
    public static int SizeFor(int number, int width, int height)
    {
        var digits = Text(number).Length;
        return Math.Max(1, Math.Min(height / Height, width / (digits * 2 * (Width + 1))));
    }

    /// <summary>A number as rows of blocks, each stroke twice as wide as high: cells are narrow.</summary>
    /// <param name="number">Zero or more.</param>
    /// <param name="size">1 for five rows, 2 for ten.</param>
    /// <param name="block">What a stroke is made of.</param>
    public static IEnumerable<string> Rows(int number, int size, char block)
    {
        var shapes = Text(number).Select(digit => Shapes[digit - '0'].Split('|')).ToList();
        for (var y = 0; y < Height * size; y++)
        {
            var row = y / size;
            var strokes = string.Join(' ', shapes.Select(shape => shape[row]));
            yield return string.Concat(strokes.Select(stroke => new string(stroke == '#' ? block : ' ', 2 * size)));
        }
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
