using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Forms;

/// <summary>What came of saving a form.</summary>
public abstract record SaveOutcome
{
    public static SaveOutcome Done { get; } = new Saved();

    /// <summary>Refused because of one entry; its message stands beside it and the form stays as typed.</summary>
    public static SaveOutcome Refuse(string entryId, string message) => new RefusedEntry(entryId, message);

    /// <summary>Refused as a whole, such as a search through nothing; the form stays as typed.</summary>
    public static SaveOutcome Refuse(string message) => new RefusedForm(message);

    /// <summary>Refused by the record; the sentence stands beside the entry that answers for it, see <see cref="Entry.AnswersFor"/>, or else beside the form.</summary>
    public static SaveOutcome Refuse(Refusal refusal) => new RefusedForm(refusal.Sentence) { Code = refusal.Code };

    /// <summary>Nothing is wrong with what was typed, but the record cannot take it now: it is locked, read-only, full or damaged.</summary>
    public static SaveOutcome NotNow(string message) => new RefusedForm(message) { IsForNow = true };
}

public sealed record Saved : SaveOutcome;

public sealed record RefusedEntry(string EntryId, string Message) : SaveOutcome;

public sealed record RefusedForm(string Message) : SaveOutcome
{
    /// <summary>Whether the same text may be taken another time.</summary>
    public bool IsForNow { get; init; }

    /// <summary>What it is about, in the record's word for programs; null where it is about no one entry.</summary>
    public string? Code { get; init; }
}
