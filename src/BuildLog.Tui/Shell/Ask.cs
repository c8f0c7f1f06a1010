using BuildLog.Tui.Forms;
using Terminal.Gui.App;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Shell;

/// <summary>A question with a safe answer, which has the focus and is what Esc means.</summary>
internal sealed class Ask : Popup
{
    private readonly Question question;

    private Ask(Question question, string? helpPage)
        : base(question.Title)
    {
        this.question = question;
        HelpPage = helpPage;
        var text = new TextPage { X = 1, Y = 1, Width = Dim.Fill(1), Height = Dim.Fill(4), CanFocus = false };
        text.Show([TextLine.Of(question.Text)]);

        var no = new Button { Text = question.No, X = 1, Y = Pos.AnchorEnd(3), ShadowStyle = ShadowStyles.None };
        var yes = new Button { Text = question.Yes, X = Pos.Right(no) + 2, Y = Pos.Top(no), ShadowStyle = ShadowStyles.None };
        no.Accepting += (_, e) => Answer(e, yes: false);
        yes.Accepting += (_, e) => Answer(e, yes: true);
        Add(text, no, yes);
        KeyHint[] help = helpPage is null ? [] : [new("F1", Spoken("help"))];
        ShowKeys([new("← →", Spoken("choose")), new("Enter", Spoken("answer")), .. help, new("Esc", question.No)]);

        AddCommand(Command.Left, () => no.SetFocus());
        AddCommand(Command.Right, () => yes.SetFocus());
        KeyBindings.Add(Key.CursorLeft, Command.Left);
        KeyBindings.Add(Key.CursorRight, Command.Right);
    }

    protected override int WantedWidth => 64;

    protected override int WantedHeight => TextFit.Wrap(question.Text, InnerWidth - 3).Count() + 7;

    protected override string? HelpPage { get; }

    private bool Said { get; set; }

    // Whoever typed on did not see that something is asked.
    protected override string WhyNothing(string key) => Spoken($"{key} is no answer. Enter: the marked one. Esc: {question.No}");

    public static bool Confirm(IApplication app, Question question, string? helpPage = null)
    {
        using var ask = new Ask(question, helpPage);
        app.Run(ask);
        return ask.Said;
    }

    private void Answer(CommandEventArgs e, bool yes)
    {
        Said = yes;
        e.Handled = true;
        App?.RequestStop(this);
    }
}
