namespace BuildLog.Tui.Forms;

/// <summary>What came of saving a form.</summary>
public abstract record SaveOutcome
{
    public static SaveOutcome Done { get; } = new Saved();

    /// <summary>Refused because of one entry; its message stands beside it and the form stays as typed.</summary>
    public static SaveOutcome Refuse(string entryId, string message) => new RefusedEntry(entryId, message);

    /// <summary>Refused as a whole, such as a locked record; the form stays as typed.</summary>
    public static SaveOutcome Refuse(string message) => new RefusedForm(message);
}

public sealed record Saved : SaveOutcome;

public sealed record RefusedEntry(string EntryId, string Message) : SaveOutcome;

public sealed record RefusedForm(string Message) : SaveOutcome;
