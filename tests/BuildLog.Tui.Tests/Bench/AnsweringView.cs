using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Tests.Bench;

/// <summary>A workbench without a terminal: answers forms and choices from a list, through the same checks the screen runs.</summary>
internal sealed class AnsweringView(WorkbenchModel open) : IWorkbenchView
{
    private readonly Queue<Dictionary<string, string>> answers = new();
    private readonly Queue<string?> choices = new();

    private Func<TallyModel, bool>? counting;
    private bool? agrees;
    private bool isOnlyLooking;

    public WorkbenchModel Model { get; private set; } = open;

    public List<string> Said { get; } = [];

    /// <summary>The messages of forms that could not be saved as answered.</summary>
    public List<string> Refused { get; } = [];

    /// <summary>What forms said of the values typed into them.</summary>
    public List<string> Echoes { get; } = [];

    public AnsweringView Type(params (string Entry, string Text)[] texts)
    {
        answers.Enqueue(texts.ToDictionary(text => text.Entry, text => text.Text));
        return this;
    }

    /// <summary>The same, but the form is left unsaved: what it says meanwhile is in <see cref="Echoes"/>.</summary>
    public AnsweringView Look(params (string Entry, string Text)[] texts)
    {
        isOnlyLooking = true;
        return Type(texts);
    }

    public AnsweringView Pick(string? choice)
    {
        choices.Enqueue(choice);
        return this;
    }

    /// <summary>The texts shown, each with its lines.</summary>
    public List<IReadOnlyList<string>> Told { get; } = [];

    /// <summary>The answer to every question from now on; without it none is expected.</summary>
    public AnsweringView Agree(bool answer)
    {
        agrees = answer;
        return this;
    }

    /// <summary>What the hands do at the tally; without it the count is left.</summary>
    public AnsweringView Counting(Func<TallyModel, bool> count)
    {
        counting = count;
        return this;
    }

    public void Show(WorkbenchModel model) => Model = model;

    public void Say(string message) => Said.Add(message);

    public bool Fill(Form form)
    {
        Assert.NotEmpty(Tui.Shell.HelpText.Of(form.HelpPage));
        var typed = form.Entries.ToDictionary(entry => entry.Id, entry => entry.Initial);
        foreach (var (entry, text) in answers.Dequeue())
        {
            Assert.True(typed.ContainsKey(entry), $"The form '{form.Title}' asks nothing called '{entry}'.");
            typed[entry] = text;
        }

        var values = new FormValues(typed);
        var hidden = form.Entries.Where(entry => entry.ShownWhen is { } shown && !shown(values)).Select(entry => entry.Id).ToHashSet();
        foreach (var id in hidden) typed.Remove(id);
        values = new FormValues(typed);

        Echoes.AddRange(form.Echo?.Invoke(values) ?? []);
        Refused.AddRange(form.Entries.Where(entry => !hidden.Contains(entry.Id)).Select(entry => entry.Check?.Invoke(values)).OfType<string>());
        if (Refused.Count > 0 || isOnlyLooking) return isOnlyLooking = false;

        switch (form.Save(values))
        {
            case RefusedEntry refused:
                Refused.Add(refused.Message);
                return false;
            case RefusedForm refused:
                Refused.Add(refused.Message);
                return false;
            default:
                return true;
        }
    }

    public bool Tally(TallyModel tally) => counting?.Invoke(tally) == true;

    public bool Confirm(Question question) => agrees ?? throw new InvalidOperationException($"Nobody expected '{question.Title}'.");

    public string? Choose(string title, IReadOnlyList<ChoiceOption> options, string? at = null, string? help = null)
    {
        if (help is not null) Assert.NotEmpty(Tui.Shell.HelpText.Of(help));
        var choice = choices.Dequeue();
        Assert.True(choice is null || options.Any(option => option.Value == choice), $"'{choice}' is not offered by '{title}'.");
        return choice;
    }

    public void Tell(string title, IReadOnlyList<string> lines) => Told.Add(lines);

    public void Tell(string title, Func<int, IReadOnlyList<Tui.Shell.TextLine>> linesAt) => Told.Add([.. linesAt(78).Select(line => line.Text)]);

    public bool TellOrPrint(string title, IReadOnlyList<string> lines, string? help = null)
    {
        if (help is not null) Assert.NotEmpty(Tui.Shell.HelpText.Of(help));
        Told.Add(lines);
        return agrees == true;
    }
}
