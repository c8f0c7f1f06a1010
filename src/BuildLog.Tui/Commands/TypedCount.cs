using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Commands;

/// <summary>A count as an argument: there a comma separates values, so its decimals use the point. In a form, where nothing has to be separated, it is a decimal mark.</summary>
internal static class TypedCount
{
    public static Parsed<string> Pointed(string text, CountedEnds ends)
        => text[(text.IndexOf(':', StringComparison.Ordinal) + 1)..].Contains(',', StringComparison.Ordinal)
            ? new Refusal("turns", $"{Shown.Quoted(text)}: in a count the comma parts the two wheels; decimals use the point.", ends.Example)
            : text;
}
