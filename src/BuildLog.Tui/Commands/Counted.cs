using System.CommandLine;
using System.Globalization;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Commands;

/// <summary>An option that says how many.</summary>
internal static class Counted
{
    private const int Most = 10_000;

    public static int Read(ParseResult parse, Option<string?> option, int otherwise)
    {
        if (parse.GetValue(option) is not { } text) return otherwise;
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is > 0 and <= Most
            ? number
            : throw Reading.Wrong(option.Name, new Refusal("count", Spoken($"'{text}' is no number of entries: 1 to {Most}."), "50"));
    }
}
