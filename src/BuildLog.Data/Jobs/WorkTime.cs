using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Jobs;

/// <summary>Reads a time worked and words it.</summary>
public static partial class WorkTime
{
    private const string Right = "2:30";

    /// <summary>Minutes, from <c>2.5</c>, <c>2 1/2 h</c>, <c>2:30</c>, <c>2 h 30 min</c> or <c>45 min</c>; a bare number is hours.</summary>
    public static Parsed<int> Read(string text)
    {
        var typed = text.Trim();
        if (typed.Length == 0) return new Refusal("hours", Spoken("The hours are missing."), Right);
        if (Clock().Match(typed) is { Success: true } clock)
            return (60 * int.Parse(clock.Groups["h"].Value, CultureInfo.InvariantCulture)) + int.Parse(clock.Groups["m"].Value, CultureInfo.InvariantCulture);
        if (Minutes().Match(typed) is { Success: true } minutes) return int.Parse(minutes.Groups["m"].Value, CultureInfo.InvariantCulture);

        var hours = Hours().Match(typed);
        return hours.Success && QuantityText.ReadNumber(hours.Groups["h"].Value).Understood(out var number) && number is >= 0 and < 1000
            ? (int)Math.Round(60 * number)
            : new Refusal("hours", Spoken($"{Shown.Quoted(typed)} is no time worked."), Right);
    }

    /// <summary><c>2:30 h</c>.</summary>
    public static string InWords(int minutes) => FormattableString.Invariant($"{minutes / 60}:{minutes % 60:00} h");

    [GeneratedRegex(@"^(?<h>[0-9]{1,3})(?: ?: ?| ?h(?:ours?)? ?)(?<m>[0-5]?[0-9])(?: ?(?:h|min|m))?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Clock();

    [GeneratedRegex(@"^(?<m>[0-9]{1,4}) ?(?:min|minutes?|m)\.?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Minutes();

    [GeneratedRegex(@"^(?<h>[0-9.,/½¼¾ ]+?) ?(?:h|hours?|hrs?)?\.?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Hours();
}
