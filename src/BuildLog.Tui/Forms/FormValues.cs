using System.Collections.Immutable;

namespace BuildLog.Tui.Forms;

/// <summary>What stands in a form, by entry. Entries that are hidden or unknown read as empty.</summary>
public sealed class FormValues(IReadOnlyDictionary<string, string> texts)
{
    private readonly ImmutableDictionary<string, string> texts = texts.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>The text as typed, trimmed.</summary>
    public string this[string id] => AsTyped(id).Trim();

    /// <summary>The text exactly as typed.</summary>
    public string AsTyped(string id) => texts.GetValueOrDefault(id, "");

    /// <summary>The lines that carry something, trimmed.</summary>
    public IReadOnlyList<string> Lines(string id) =>
        AsTyped(id).Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);

    public bool IsYes(string id) => this[id] == YesNoEntry.Yes;

    public bool IsEmpty(string id) => this[id].Length == 0;
}
