namespace BuildLog.Tui.Shell;

/// <summary>A run of text with one meaning.</summary>
public sealed record TextRun(string Text, Tone Tone = Tone.Plain);

/// <summary>One line of text made of runs. A plain string is a line too.</summary>
public sealed record TextLine(IReadOnlyList<TextRun> Runs)
{
    public static TextLine Empty { get; } = new([]);

    /// <summary>The words without their tones.</summary>
    public string Text => string.Concat(Runs.Select(run => run.Text));

    public static TextLine Of(string text, Tone tone = Tone.Plain) => new([new TextRun(text, tone)]);

    public static TextLine Of(params TextRun[] runs) => new(runs);

    public static implicit operator TextLine(string text) => Of(text);

    public override string ToString() => Text;
}
