namespace BuildLog.Tui.Forms;

/// <summary>A question before something that cannot be taken back. Esc and Enter mean <paramref name="No"/>.</summary>
/// <param name="Yes">The answer that does it, as a verb: "Throw away".</param>
/// <param name="No">The safe answer, as a verb: "Keep writing".</param>
public sealed record Question(string Title, string Text, string Yes, string No);
