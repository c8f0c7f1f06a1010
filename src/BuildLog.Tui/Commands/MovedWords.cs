using System.Text.Json.Nodes;
using BuildLog.Data;

namespace BuildLog.Tui.Commands;

/// <summary>What an export or an import carried.</summary>
internal static class MovedWords
{
    public static string InWords(IReadOnlyDictionary<Matter, int> entries)
        => string.Join(", ", entries.OrderBy(kind => kind.Key).Select(kind => FormattableString.Invariant($"{kind.Key.InWords()} {kind.Value}")));

    public static JsonObject InJson(IReadOnlyDictionary<Matter, int> entries)
        => new(entries.OrderBy(kind => kind.Key).Select(kind => KeyValuePair.Create<string, JsonNode?>(kind.Key.ToString(), kind.Value)));

    public static IEnumerable<string> Lacking(IReadOnlyList<string> names)
    {
        if (names.Count > 0) yield return Spoken($"Without their file, which is missing or altered: {string.Join(", ", names)}");
    }
}
