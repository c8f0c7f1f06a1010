namespace BuildLog.Tui.Forms;

/// <summary>One thing a form asks for.</summary>
/// <param name="Id">Key of its value in <see cref="FormValues"/>.</param>
/// <param name="Caption">The trade's word for it.</param>
public abstract record Entry(string Id, string Caption)
{
    /// <summary>A short hint with an example: "as counted, such as 10:20 1/2".</summary>
    public string Hint { get; init; } = "";

    /// <summary>What stands there when the form opens.</summary>
    public string Initial { get; init; } = "";

    /// <summary>The message for this entry, or null when content.</summary>
    public Func<FormValues, string?>? Check { get; init; }

    /// <summary>What the value so far means, in the other units or as a sentence; null or empty for nothing to say.</summary>
    public Func<FormValues, string?>? Echo { get; init; }

    /// <summary>The codes of what the record refuses because of this entry, beside its own id.</summary>
    public IReadOnlyList<string> AnswersFor { get; init; } = [];

    /// <summary>Whether what the record refused is this entry's matter.</summary>
    public bool IsAbout(string code) => Id == code || AnswersFor.Contains(code);

    /// <summary>Whether the entry matters for the values so far; hidden entries are neither checked nor saved.</summary>
    public Func<FormValues, bool>? ShownWhen { get; init; }
}

/// <summary>One line of free text.</summary>
public sealed record TextEntry(string Id, string Caption) : Entry(Id, Caption)
{
    /// <summary>What is saved here is suggested another time.</summary>
    public bool IsRemembered { get; init; }

    /// <summary>What it is suggested for: entries of the same kind in several forms share it, and others that only have the same id do not.</summary>
    public string RememberedAs
    {
        get => field ?? Id;
        init;
    }
}

/// <summary>Several readings, one a line.</summary>
/// <param name="Height">Lines on screen; more may be typed.</param>
public sealed record LinesEntry(string Id, string Caption, int Height = 4) : Entry(Id, Caption);

/// <summary>One of a few.</summary>
public sealed record ChoiceEntry(string Id, string Caption, IReadOnlyList<ChoiceOption> Options) : Entry(Id, Caption);

/// <summary>Yes or no; the value is one of the two words.</summary>
public sealed record YesNoEntry(string Id, string Caption) : Entry(Id, Caption)
{
    internal const string Yes = "yes";
    internal const string No = "no";

    /// <summary>What stands there when the form opens.</summary>
    public bool IsYes
    {
        get => Initial == Yes;
        init => Initial = value ? Yes : No;
    }
}

/// <summary>One possible answer: the value that is saved and the words that are shown.</summary>
public sealed record ChoiceOption(string Value, string Words);
