using System.CommandLine;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary>Reads the ratios known for a donor: <c>3.90,4.10</c> or, where the decimals have commas, <c>"3,90 4,10"</c>.</summary>
internal static class ListedRatios
{
    public static List<double> Of(ParseResult parse, Option<string?> option, RatioRange range)
    {
        var parted = Parted(parse, option);
        return [.. parted.Select(one => Reading.Of(option.Name, one, text => range.Read(text) is { Refusal: { Code: "out-of-range" } refusal } && IsPartOfMore(parse.GetValue(option)!, one)
            ? refusal with { Message = $"{refusal.Message} A comma parts the ratios: write decimals with a point, or part by blanks.", Example = "3.90,4.10" }
            : range.Read(text)).Value)];
    }

    /// <summary>The texts of the ratios; none where the option was not given.</summary>
    public static string[] Parted(ParseResult parse, Option<string?> option)
    {
        if (parse.GetValue(option) is not { } text) return [];

        const StringSplitOptions Bare = StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries;
        var parted = text.Split([' ', ';'], Bare);
        return parted.Length > 1 ? [.. parted.Select(one => one.Trim(','))] : text.Split(',', Bare);
    }

    private static bool IsPartOfMore(string text, string one) => text.Contains(',', StringComparison.Ordinal) && !one.Contains('.', StringComparison.Ordinal);
}
