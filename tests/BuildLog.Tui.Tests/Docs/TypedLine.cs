using System.Text.RegularExpressions;
using BuildLog.Tui.Tests.Commands;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>A command line as a page shows it, run in a folder of its own.</summary>
internal static partial class TypedLine
{
    /// <summary>The words behind <c>buildlog</c>, without quotes and without what stands behind "#".</summary>
    public static string[] Words(string line)
        => [.. Word().Matches(Comment().Replace(line, "")).Select(word => word.Value.Trim('"')).Skip(1)];

    /// <summary>Runs it; files that it names without a folder lie in <paramref name="folder"/>.</summary>
    public static Said Run(string line, string folder, params string[] more)
        => Said.By([.. Words(line).Select(word => FileName().IsMatch(word) ? Path.Combine(folder, word) : word), .. more]);

    [GeneratedRegex("\"[^\"]*\"|\\S+")]
    private static partial Regex Word();

    [GeneratedRegex(@"\s+#\s.*$")]
    private static partial Regex Comment();

    [GeneratedRegex(@"^[\w-]+\.(pdf|zip|csv|db|jpg)$")]
    private static partial Regex FileName();
}
