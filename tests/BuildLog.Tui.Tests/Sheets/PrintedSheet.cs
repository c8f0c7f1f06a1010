using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Sheets;

/// <summary>A demo vehicle's sheet as it is printed, and what its rounded numbers may have been.</summary>
internal static partial class PrintedSheet
{
    /// <summary>The sheet's text with its lines joined again, as a sentence is wrapped anywhere.</summary>
    public static string Of(string vehicle)
    {
        var said = Said.By("sheet", vehicle, "--demo", "--for", "own", "--preview");
        Assert.Equal(0, said.ExitCode);
        return Space().Replace(said.Output, " ");
    }

    /// <summary>What a number with its ± may have been before it was rounded: half of the last place to either side, as the ± shows that place.</summary>
    public static (double Low, double High) Number(string sheet, string pattern)
    {
        var match = Regex.Match(sheet, pattern);
        Assert.True(match.Success, $"'{pattern}' is not on the sheet.");
        return Unrounded(match.Groups[1].Value, match.Groups[2].Value);
    }

    /// <param name="value">As printed.</param>
    /// <param name="half">The ± printed behind it; empty for none, then the value's own places count.</param>
    public static (double Low, double High) Unrounded(string value, string half = "")
    {
        var places = half.Length > 0 ? half : value;
        var step = places.Contains('.', StringComparison.Ordinal)
            ? Math.Pow(10, -(places.Length - places.IndexOf('.', StringComparison.Ordinal) - 1))
            : half.Length > 0 ? Math.Pow(10, half.Length - half.TrimEnd('0').Length) : 1;
        var number = double.Parse(value, CultureInfo.InvariantCulture);
        return (number - (step / 2) - 1e-9, number + (step / 2) + 1e-9);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Space();
}
