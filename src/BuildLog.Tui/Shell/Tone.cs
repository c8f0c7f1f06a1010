namespace BuildLog.Tui.Shell;

/// <summary>How a piece of text is meant. Colour repeats it; the words alone must already say it.</summary>
public enum Tone
{
    /// <summary>Ordinary text.</summary>
    Plain,

    /// <summary>Beside the matter: sources, hints, units of a heading.</summary>
    Quiet,

    /// <summary>The number or name the eye should find first.</summary>
    Strong,

    /// <summary>A heading inside a page.</summary>
    Heading,

    /// <summary>A finding that fits.</summary>
    Fits,

    /// <summary>A finding to watch.</summary>
    Watch,

    /// <summary>A finding that cannot be said yet.</summary>
    Open,

    /// <summary>A finding that clashes, or a message about wrong input.</summary>
    Clash,
}
