namespace BuildLog.Tui.Forms;

/// <summary>A form being filled: what stands in it, which entries show, which messages hang where. No terminal in it.</summary>
internal sealed class FormState
{
    private readonly Form form;
    private readonly Scratchpad pad;
    private readonly Dictionary<string, string> typed;
    private readonly Dictionary<string, string> messages = new(StringComparer.Ordinal);
    private string? refusedAt; // the entry that saving was refused for

    /// <param name="form">What is asked.</param>
    /// <param name="pad">Where it is kept until it is saved.</param>
    /// <param name="draft">What was typed another time; null to begin afresh.</param>
    public FormState(Form form, Scratchpad? pad = null, IReadOnlyDictionary<string, string>? draft = null)
    {
        this.form = form;
        this.pad = pad ?? new Scratchpad();
        typed = form.Entries.ToDictionary(entry => entry.Id, entry => draft?.GetValueOrDefault(entry.Id) ?? entry.Initial, StringComparer.Ordinal);
    }

    /// <summary>Message for the form as a whole; empty for none.</summary>
    public string FormMessage { get; private set; } = "";

    /// <summary>Why the latest wish to save failed though every entry was as it should be; null where it did not.</summary>
    public string? RefusedAtSaving { get; private set; }

    /// <summary>Whether anything differs from what stood there at first.</summary>
    public bool IsChanged => form.Entries.Any(entry => typed[entry.Id] != entry.Initial);

    /// <summary>Whether the record could not take it when it was last to be saved; what was typed then stays for another time.</summary>
    public bool WaitsForTheRecord { get; private set; }

    /// <summary>The entries that matter for the values so far.</summary>
    public IReadOnlyList<Entry> Shown => ShownAndTheirValues().Shown;

    /// <summary>What stands in the entries that show.</summary>
    public FormValues Values => ShownAndTheirValues().Values;

    /// <summary>What the values so far come to; while an entry is wrong, that one is named instead: it may be what the rest hangs on.</summary>
    public IReadOnlyList<string> Echo => form.Echo?.Invoke(Values) is not [_, ..] said ? []
        : Shown.FirstOrDefault(entry => messages.ContainsKey(entry.Id)) is { } wrong ? [Spoken($"What it comes to is said once “{wrong.Caption.Trim()}” is right.")]
        : said;

    public string Text(string id) => typed[id];

    /// <summary>Takes a new text, and keeps it for the case of a crash; the message it may answer goes away.</summary>
    public void Set(string id, string text)
    {
        if (typed[id] == text) return;
        typed[id] = text;
        messages.Remove(id);
        FormMessage = "";
        CheckAgain();
        if (IsChanged) pad.KeepDraft(form.KeptAs, typed);
        else pad.DropDraft(form.KeptAs);
        if (pad.Trouble is { } trouble) FormMessage = trouble;
    }

    /// <summary>What is asked before it is left; null where there is nothing to lose.</summary>
    public Question? BeforeLeaving => !IsChanged ? null
        : !WaitsForTheRecord ? new(Spoken("Leave without saving?"), Spoken("What you typed here has not been saved."), Spoken("Throw it away"), Spoken("Keep typing"))
        : new(
            Spoken("Leave without saving?"),
            Spoken($"The record could not take what you typed. It is kept{(pad.Trouble is null ? "" : Spoken(" until you quit"))}, and offered when you come here again."),
            Spoken("Leave it for later"),
            Spoken("Keep typing"));

    /// <summary>Left: what was typed is thrown away, unless it only waits for the record.</summary>
    public void Leave()
    {
        if (!WaitsForTheRecord) pad.DropDraft(form.KeptAs);
    }

    /// <summary>Says something about the form as a whole.</summary>
    public void Say(string message) => FormMessage = message;

    /// <summary>How an entry would go on if it were what was saved there another time; null for nothing to suggest.</summary>
    public string? SuggestionFor(Entry entry)
        => entry is TextEntry { IsRemembered: true } text && typed[entry.Id].Length > 0 ? pad.Suggest(text.RememberedAs, typed[entry.Id]) : null;

    /// <summary>The message at an entry; its sign sets it apart from a hint where there are no colours.</summary>
    public string? MessageOf(string id) => messages.TryGetValue(id, out var message) ? "! " + message : null;

    /// <summary>What stands under an entry when it has no message: what the text means, else the hint.</summary>
    public string NoteOf(Entry entry)
    {
        var echo = typed[entry.Id].Trim().Length > 0 ? entry.Echo?.Invoke(Values) : null;
        return string.IsNullOrEmpty(echo) ? entry.Hint : echo;
    }

    /// <summary>Looks at one entry as soon as it is left, unless nothing was typed yet.</summary>
    /// <returns>Whether something else is said of it than before.</returns>
    public bool CheckWhenLeft(Entry entry)
    {
        var before = MessageOf(entry.Id);
        if (typed[entry.Id].Trim().Length > 0) Check(entry, Values);
        return MessageOf(entry.Id) != before;
    }

    /// <summary>Checks everything that shows and, if all is well, saves.</summary>
    /// <returns>True when saved; else the first entry with a message, or none for a message about the whole form.</returns>
    public (bool Saved, string? FirstWrong) TrySave()
    {
        FormMessage = "";
        WaitsForTheRecord = false;
        RefusedAtSaving = null;
        var (shown, values) = ShownAndTheirValues();
        messages.Clear();
        refusedAt = null;
        foreach (var entry in shown) Check(entry, values);
        if (shown.FirstOrDefault(entry => messages.ContainsKey(entry.Id)) is { } wrong) return (false, wrong.Id);

        var outcome = BesideItsEntry(form.Save(values), shown);
        RefusedAtSaving = outcome is RefusedEntry entrys ? entrys.Message : (outcome as RefusedForm)?.Message;
        switch (outcome)
        {
            case RefusedEntry refused when shown.Any(entry => entry.Id == refused.EntryId):
                messages[refusedAt = refused.EntryId] = refused.Message;
                return (false, refused.EntryId);
            case RefusedEntry refused: // about an entry that does not show: then it concerns the form
                FormMessage = refused.Message;
                return (false, null);
            case RefusedForm refused:
                FormMessage = refused.Message;
                WaitsForTheRecord = refused.IsForNow;
                return (false, null);
            default:
                pad.DropDraft(form.KeptAs);
                pad.Remember(shown.OfType<TextEntry>().Where(entry => entry.IsRemembered).ToDictionary(entry => entry.RememberedAs, entry => typed[entry.Id], StringComparer.Ordinal));
                return (true, null);
        }
    }

    private static SaveOutcome BesideItsEntry(SaveOutcome outcome, IReadOnlyList<Entry> shown)
        => outcome is RefusedForm { Code: { } code, Message: var message } && shown.FirstOrDefault(entry => entry.IsAbout(code)) is { } blamed ? new RefusedEntry(blamed.Id, message) : outcome;

    // What is wrong at one entry may hang on another, such as counts on which wheels turned. What saving refused is not asked again at each key.
    private void CheckAgain()
    {
        if (messages.Count == 0) return;
        var (shown, values) = ShownAndTheirValues();
        foreach (var entry in shown.Where(entry => messages.ContainsKey(entry.Id) && entry.Id != refusedAt)) Check(entry, values);
    }

    private void Check(Entry entry, FormValues values)
    {
        messages.Remove(entry.Id);
        var isUnanswered = values.IsEmpty(entry.Id) && (entry is YesNoEntry || (entry is ChoiceEntry choice && choice.Options.All(option => option.Value.Length > 0)));
        if ((isUnanswered ? Spoken("Choose one.") : entry.Check?.Invoke(values)) is { } message) messages[entry.Id] = message;
    }

    // An entry may depend on those above it; one that is hidden reads as empty to those below.
    private (IReadOnlyList<Entry> Shown, FormValues Values) ShownAndTheirValues()
    {
        var shown = new List<Entry>();
        var texts = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var entry in form.Entries)
        {
            if (entry.ShownWhen?.Invoke(new FormValues(texts)) == false) continue;
            shown.Add(entry);
            texts[entry.Id] = typed[entry.Id];
        }

        return (shown, new FormValues(texts));
    }
}
