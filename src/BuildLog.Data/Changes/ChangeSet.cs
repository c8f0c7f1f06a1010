using System.Globalization;

namespace BuildLog.Data.Changes;

/// <summary>What a change did to the line of changes before it.</summary>
public enum ChangeStep
{
    /// <summary>Something new.</summary>
    Forward,

    /// <summary>It took an earlier change back.</summary>
    Undo,

    /// <summary>It took an undoing back.</summary>
    Redo,
}

/// <summary>One change as somebody made it: everything that was stored together.</summary>
/// <remarks>Only ever added: whoever undoes a change adds another one that turns it round.</remarks>
public sealed class ChangeSet
{
    private ChangeSet() { }

    /// <summary>Its number in this file; a later change has a larger one.</summary>
    public long Id { get; private set; }

    public DateTimeOffset When => DateTimeOffset.Parse(At, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    /// <summary>What was done, such as <c>fitted Harrow yard axle to Brindle</c>.</summary>
    public string Label { get; private set; } = "";

    /// <summary>What was taken out, such as <c>axle Harrow yard axle</c>; empty where nothing was.</summary>
    public string TakenOut => Label.IndexOf(ChangeList.Removed, StringComparison.Ordinal) is >= 0 and var at ? Label[(at + ChangeList.Removed.Length)..] : "";

    /// <summary>The name of the machine it was done on.</summary>
    public string Machine { get; private set; } = "";

    public ChangeStep Step { get; private set; }

    /// <summary>The change that this one takes back; null for something new.</summary>
    public long? UndoesId { get; private set; }

    /// <summary>What changed, value by value, as far as a person typed it.</summary>
    public IReadOnlyList<FieldChange> Fields => [.. Rows.OrderBy(row => row.Id).SelectMany(FieldChange.Of)];

    internal string At { get; private set; } = "";

    internal List<ChangeRow> Rows { get; } = [];
}
