namespace BuildLog.Tui.Forms;

/// <summary>A form as a declaration: what it asks, what it checks, what it echoes, and who saves it.</summary>
public sealed record Form
{
    /// <summary>The help about keys, quantities and days in any form.</summary>
    internal const string GeneralHelp = "Forms";

    public required string Title { get; init; }

    /// <summary>Under what it is kept while it is half filled: what it is about beside its title, where another vehicle has such a form too.</summary>
    public string KeptAs
    {
        get => field ?? Title;
        init;
    }

    /// <summary>It is about no vehicle that is there, such as a new one.</summary>
    public bool IsOfTheShop { get; init; }

    /// <summary>None for what needs cautions and a set-up but no answer: it is saved as soon as those are done.</summary>
    public required IReadOnlyList<Entry> Entries { get; init; }

    /// <summary>Called with what was typed once every check is content.</summary>
    public required Func<FormValues, SaveOutcome> Save { get; init; }

    /// <summary>Shown alone first and acknowledged before anything is asked.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Shown after the cautions: the set-up drawn in characters, and what to do step by step.</summary>
    public IReadOnlyList<string> SetUp { get; init; } = [];

    /// <summary>The entry that has the focus at first; null for the first one.</summary>
    public string? BeginsAt { get; init; }

    /// <summary>Recomputed at every key: what the values so far come to. Called with unfinished values too, so it must not throw on them.</summary>
    public Func<FormValues, IReadOnlyList<string>>? Echo { get; init; }

    /// <summary>The verb on the button that saves.</summary>
    public string SaveCaption { get; init; } = Spoken("Save");

    /// <summary>Page of the help that F1 opens; F1 once more leads to that of forms.</summary>
    public string HelpPage { get; init; } = GeneralHelp;
}
