using BuildLog.Tui.Forms;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;

namespace BuildLog.Tui.Tests.Forms;

public sealed class ChoiceBoxTests : IDisposable
{
    private readonly HeadlessScreen screen = new();
    private FormValues? saved;

    public void Dispose() => screen.Dispose();

    [Fact]
    public void Arrow_keys_go_round_among_a_few()
    {
        using var form = new FormScreen(Asking("rear", ["rear", "front", "all"]));
        screen.Show(form).Press(Key.CursorLeft);
        Assert.Contains("( ) rear  ( ) front  (•) all", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.CursorRight, Key.Space);
        Assert.Contains("( ) rear  (•) front  ( ) all", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_default_nothing_is_chosen_until_a_key_chooses()
    {
        using var form = new FormScreen(Asking("", ["one held", "both together"]));
        screen.Show(form);
        Assert.Contains("( ) one held  ( ) both together", screen.Text, StringComparison.Ordinal);

        screen.Press(Key.Space);
        Assert.Contains("(•) one held  ( ) both together", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Enter_passes_no_choice_that_is_still_open_but_offers_it()
    {
        using var form = new FormScreen(Asking("", ["one held", "both together"]));
        screen.Run(
            form, Steps.Press(Key.Enter), Steps.See("›one held"), Steps.Press(Key.CursorDown), Steps.Press(Key.Enter),
            Steps.See("( ) one held  (•) both together"), Steps.Press(Key.S.WithCtrl));
        Assert.Equal("both together", saved!["which"]);
    }

    [Fact]
    public void An_option_wider_than_the_form_goes_on_below()
    {
        using var form = new FormScreen(Asking("", ["turns the same way: locked, or roll both wheels together", "turns backwards: open, so hold the other wheel still"]));
        screen.Show(form).Resize(60, 18);

        Assert.Contains("together", screen.Text, StringComparison.Ordinal);
        Assert.Contains("still", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_click_chooses()
    {
        using var form = new FormScreen(Asking("rear", ["rear", "front", "all"]));
        screen.Show(form).Click("( ) front");
        Assert.Contains("(•) front", screen.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Many_are_chosen_from_a_list_that_enter_opens()
    {
        string[] parts = [.. Enumerable.Range(1, 40).Select(i => $"Invented axle number {i}")];
        using var form = new FormScreen(Asking(parts[0], parts));
        screen.Run(
            form,
            Steps.See("(40 to choose from)"),
            Steps.Press(Key.Enter),
            Steps.See("Invented axle number 5"),
            Steps.Press(Key.End),
            Steps.See("Invented axle number 40"),
            Steps.Press(Key.Enter),
            Steps.See("Invented axle number 40  (40 to choose from)"),
            Steps.Press(Key.S.WithCtrl));
        Assert.Equal("Invented axle number 40", saved!["which"]);
    }

    private Form Asking(string initial, string[] options) => new()
    {
        Title = "Choose",
        Entries = [new ChoiceEntry("which", "Which", [.. options.Select(option => new ChoiceOption(option, option))]) { Initial = initial }],
        Save = values =>
        {
            saved = values;
            return SaveOutcome.Done;
        },
    };
}
