using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Forms;

/// <summary>Whoever can put a form, a question or a text before the person and wait for the answer.</summary>
public interface IFormHost
{
    /// <summary>Lets the person fill a form; returns when it was saved or left.</summary>
    /// <returns>True when the form's own save accepted it.</returns>
    bool Fill(Form form);

    /// <summary>Asks a question whose safe answer is no.</summary>
    bool Confirm(Question question);

    /// <summary>Lets the person choose one of several; null when left.</summary>
    /// <param name="title">The question.</param>
    /// <param name="options">What there is to choose from.</param>
    /// <param name="at">Where the cursor is at first.</param>
    /// <param name="help">The help page about this question; null for that of what is in view.</param>
    string? Choose(string title, IReadOnlyList<ChoiceOption> options, string? at = null, string? help = null);

    /// <summary>Shows a text until it is closed.</summary>
    void Tell(string title, IReadOnlyList<string> lines);

    /// <summary>Shows a text that is laid anew for each width, on all of the screen, until it is closed.</summary>
    void Tell(string title, Func<int, IReadOnlyList<TextLine>> linesAt);

    /// <summary>Shows a text that a key of its own prints; the line of keys says so.</summary>
    /// <param name="title">What it is.</param>
    /// <param name="lines">The text.</param>
    /// <param name="help">The help page about it; null for that of what is in view.</param>
    /// <returns>Whether it is to be printed.</returns>
    bool TellOrPrint(string title, IReadOnlyList<string> lines, string? help = null);
}
