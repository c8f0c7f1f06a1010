using System.CommandLine;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary>Reads the ratios known for a donor: <c>3.90,4.10</c> or, where the decimals have commas, <c>"3,90 4,10"</c>.</summary>
internal static class ListedRatios
{
    /// <summary>The ratios, each with the digits it was quoted to; none where the option was not given.</summary>
    public static List<QuotedRatio> Of(ParseResult parse, Option<string?> option, RatioRange range)
    {
        var whole = parse.GetValue(option);
        return [.. Parted(parse, option).Select(one => Reading.Of(option.Name, one, text => Read(text, range, whole!)))];
    }

    private static Parsed<QuotedRatio> Read(string one, RatioRange range, string whole)
    {
        var read = QuotedRatio.Read(one, range);
        return read.Refusal is { Code: "out-of-range" } refusal && whole.Contains(',', StringComparison.Ordinal) && !one.Contains('.', StringComparison.Ordinal)
            ? refusal with { Message = Spoken($"{refusal.Message} A comma parts the ratios: write decimals with a point, or part by blanks."), Example = "3.90,4.10" }
            : read;
    }

    /// <summary>The texts of the ratios; none where the option was not given.</summary>
    public static string[] Parted(ParseResult parse, Option<string?> option)
    {
        if (parse.GetValue(option) is not { } text) return [];

        const StringSplitOptions Bare = StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries;
        var parted = text.Split([' ', ';'], Bare);
        return parted.Length > 1 ? [.. parted.Select(one => one.Trim(','))] : text.Split(',', Bare);
    }
}
