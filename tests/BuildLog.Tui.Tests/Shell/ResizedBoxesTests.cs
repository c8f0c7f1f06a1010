using BuildLog.Gearing.Ratios;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Shell;
using BuildLog.Tui.Tests.Forms;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.App;
using Terminal.Gui.Views;
using static BuildLog.Tui.Tests.Headless.Steps;

namespace BuildLog.Tui.Tests.Shell;

/// <summary>Every kind of box, open while the terminal changes its size.</summary>
public sealed class ResizedBoxesTests
{
    private static readonly string LongText = string.Join(' ', Enumerable.Repeat("Chock the wheels that stay on the ground.", 6));

    private static readonly Dictionary<string, (Action<IApplication> Open, string Says)> Boxes = new(StringComparer.Ordinal)
    {
        ["a form"] = (app => FormScreen.Fill(app, VehicleForm.With(), new Scratchpad()), "Leave"),
        ["a question"] = (app => Ask.Confirm(app, new Question("Sure?", LongText, "No, leave it", "Yes, do it")), "No, leave it"),
        ["a choice"] = (app => Chooser.Choose(app, "Which axle?", [.. Enumerable.Range(1, 40).Select(k => new ChoiceOption($"{k}", $"axle {k}"))]), "axle 2"),
        ["a text"] = (app => Reader.Show(app, "Read", [.. Enumerable.Repeat(TextLine.Of(LongText), 9)]), "Chock"),
        ["a search"] = (app => SearchBox.Ask(app, "Find", "Nothing.", 14, typed => [.. Enumerable.Range(1, 60).Select(k => new SearchRow($"{k}", $"row {k}", LongText))]), "row 3"),
        ["the help"] = (app => HelpScreen.Show(app, "TurnCount"), "Help:"),
        ["cautions"] = (app => CautionsScreen.Acknowledge(app, "count", [.. Enumerable.Repeat(LongText, 5)], "TurnCount"), "Before you start"),
        ["a set-up"] = (app => SetUpScreen.GoOn(app, "count", ["  drawing", LongText], "TurnCount"), "Set up:"),
        ["the tally"] = (app => TallyScreen.Run(app, new AxleTally("Harrow banjo", Wheels.Together) { Written = "iiio" }), "turns"),
    };

    public static TheoryData<string> Kinds => [.. Boxes.Keys];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void It_looks_as_if_it_had_been_opened_at_that_size(string kind)
    {
        var (small, large) = (Opened(kind, 80, 24), Opened(kind, 160, 50));
        using var screen = new HeadlessScreen();
        using var below = new Runnable();
        string Now(HeadlessScreen s) => s.Draw().Text;

        screen.Run(
            below,
            Open(kind), See(Boxes[kind].Says), Check(s => Assert.Equal(small, Now(s))),
            Resize(160, 50), Check(s => Assert.Equal(large, Now(s))),
            Resize(50, 14), Check(s => Assert.Contains("BuildLog needs 60 × 18 characters; this window has 50 × 14", Flat(Now(s)), StringComparison.Ordinal)),
            Resize(80, 24), Check(s => Assert.Equal(small, Now(s))),
            LeaveAll);
    }

    private static string Opened(string kind, int width, int height)
    {
        var text = "";
        using var screen = new HeadlessScreen(width, height);
        using var below = new Runnable();
        screen.Run(below, Open(kind), See(Boxes[kind].Says), Check(s => text = s.Draw().Text), LeaveAll);
        return text;
    }

    private static Step Open(string kind) => s =>
    {
        Boxes[kind].Open(s.App);
        return true;
    };

    private static Step Resize(int width, int height) => s =>
    {
        s.Resize(width, height);
        return true;
    };

    private static bool LeaveAll(HeadlessScreen s)
    {
        foreach (var session in s.App.SessionStack ?? [])
        {
            if (session.Runnable is { } open) open.StopRequested = true;
        }

        return true;
    }

    // The sentence is wrapped, in the box's frame.
    private static string Flat(string text) => string.Join(' ', text.Split((char[])[' ', '\n', '│'], StringSplitOptions.RemoveEmptyEntries));
}
