namespace BuildLog.Tui.Forms;

/// <summary>Whoever can put a form, a question or a text before the person and wait for the answer.</summary>
public interface IFormHost
{
    /// <summary>Lets the person fill a form; returns when it was saved or left.</summary>
    /// <returns>True when the form's own save accepted it.</returns>
    bool Fill(Form form);

    /// <summary>Asks a question whose safe answer is no.</summary>
    bool Confirm(Question question);

    /// <summary>Lets the person choose one of several, the cursor at first on the one given; null when left.</summary>
    string? Choose(string title, IReadOnlyList<ChoiceOption> options, string? at = null);

    /// <summary>Shows a text until it is closed.</summary>
    void Tell(string title, IReadOnlyList<string> lines);

    /// <summary>Shows a text that a key of its own prints; the line of keys says so.</summary>
    /// <returns>Whether it is to be printed.</returns>
    bool TellOrPrint(string title, IReadOnlyList<string> lines);
}
