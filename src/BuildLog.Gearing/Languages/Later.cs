namespace BuildLog.Gearing.Languages;

/// <summary>A text that stands in a table made once, and is said in the language spoken whenever it is shown.</summary>
public readonly record struct Later
{
    private readonly bool isSaid;

    /// <summary>Keeps a text of the code.</summary>
    /// <param name="text">The English text.</param>
    public Later(string text) => Text = text;

    private Later(string text, bool isSaid) : this(text) => this.isSaid = isSaid;

    /// <summary>The text as it stands in the code: a name that is the same in all languages.</summary>
    public string Text { get; }

    /// <summary>The text in the language spoken now.</summary>
    public static implicit operator string(Later later) => later.ToString();

    /// <summary>A text that was said already and stays as it is.</summary>
    public static implicit operator Later(string said) => new(said, isSaid: true);

    /// <inheritdoc/>
    public override string ToString() => isSaid ? Text : Words.Spoken(Text);
}
