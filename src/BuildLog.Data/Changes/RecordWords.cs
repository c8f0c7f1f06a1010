using System.Globalization;
using System.Text.RegularExpressions;
using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;

namespace BuildLog.Data.Changes;

/// <summary>How lists name a record.</summary>
internal static partial class RecordWords
{
    /// <summary>Which one of its kind; empty where nothing tells.</summary>
    public static string Title(Kept record) => record.ToString() is { } words && words != record.GetType().ToString() ? words : "";

    /// <summary>What was done, where whoever did it has not said it better.</summary>
    public static string Did(RowOp op, Kept record, string? vehicle)
    {
        var verb = op switch { RowOp.Insert => "added", RowOp.Delete => "removed", _ => "changed" };
        var title = Title(record);
        var of = vehicle is null || record is Vehicle or Component || Names(title, vehicle) ? "" : $" of {vehicle}";
        return title.Length > 0 ? $"{verb} {record.KindInWords} {title}{of}" : $"{verb} {record.KindInWords}{of}";
    }

    // A title such as "axle for Old Blue" says already whose it is.
    private static bool Names(string title, string vehicle) => Regex.IsMatch(title, $@"(?<!\w){Regex.Escape(vehicle)}(?!\w)", RegexOptions.CultureInvariant);

    // Where the words of a column's name say nothing to whoever typed it.
    private static readonly Dictionary<string, string> Otherwise = new(StringComparer.Ordinal)
    {
        ["Align"] = "mark off by",
        ["Tape"] = "tape good to",
        ["Text"] = "as written",
        ["Claimed"] = "claimed, and counted",
        ["Per"] = "counted per",
        ["ReasonOff"] = "why it came off",
    };

    /// <summary><c>chassis number</c> for <c>ChassisNumber</c>.</summary>
    public static string Column(string name) => Otherwise.GetValueOrDefault(name) ?? string.Join(' ', Words(name));

    private static IEnumerable<string> Words(string name) => Word().Matches(name).Select(word => CultureInfo.InvariantCulture.TextInfo.ToLower(word.Value));

    [GeneratedRegex("[A-Z][a-z0-9]*")]
    private static partial Regex Word();
}
