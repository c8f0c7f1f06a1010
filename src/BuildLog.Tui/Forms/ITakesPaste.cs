namespace BuildLog.Tui.Forms;

/// <summary>An input that takes pasted text.</summary>
internal interface ITakesPaste
{
    /// <returns>False when it was not taken.</returns>
    bool TakePaste(string pasted);
}
