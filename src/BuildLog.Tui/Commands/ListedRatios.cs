using System.CommandLine;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary>Reads the ratios known for a donor: <c>3.90,4.10</c> or, where the decimals have commas, <c>"3,90 4,10"</c>.</summary>
internal static class ListedRatios
{
    public static List<double> Of(ParseResult parse, Option<string?> option, RatioRange range)
    {
        if (parse.GetValue(option) is not { } text) return [];

        const StringSplitOptions Bare = StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries;
        var parted = text.Split([' ', ';'], Bare);
        var ratios = parted.Length > 1 ? parted.Select(one => one.Trim(',')) : text.Split(',', Bare);
        return [.. ratios.Select(one => Reading.Of(option.Name, one, range.Read).Value)];
    }
}
