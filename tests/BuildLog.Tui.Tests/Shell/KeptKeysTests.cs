using BuildLog.Tui.Forms;
using BuildLog.Tui.Tests.Headless;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;
using Terminal.Gui.Views;

namespace BuildLog.Tui.Tests.Shell;

public sealed class KeptKeysTests : IDisposable
{
    private readonly HeadlessScreen screen = new();

    public void Dispose() => screen.Dispose();

    // All of them wait when the save returns, as after a first save that took its time.
    [Fact]
    public void Keys_typed_ahead_of_a_save_reach_what_comes_after_it_in_their_order()
    {
        using var bench = new Bench();
        screen.Run(
            bench,
            Steps.Press((Key)'n'),
            Steps.See("Name"),
            s =>
            {
                foreach (var key in new[] { (Key)'H', Key.S.WithCtrl, (Key)'f', (Key)'n', (Key)'K', Key.S.WithCtrl, (Key)'t' }) s.App.InjectKey(key);
                return true;
            },
            s => bench.Keys.Contains('t', StringComparison.Ordinal),
            s =>
            {
                s.App.RequestStop(bench);
                return true;
            });
        Assert.Equal("ft", bench.Keys);
        Assert.Equal(["H", "K"], bench.Saved);
    }

    private sealed class Bench : Runnable
    {
        public string Keys { get; private set; } = "";

        public List<string> Saved { get; } = [];

        protected override bool OnKeyDownNotHandled(Key key)
        {
            if (key != (Key)'n') Keys += key.AsRune;
            else FormScreen.Fill(App!, new Form { Title = "New", Entries = [new TextEntry("name", "Name")], Save = Save }, new Scratchpad());
            return true;
        }

        private SaveOutcome Save(FormValues values)
        {
            Saved.Add(values["name"]);
            return SaveOutcome.Done;
        }
    }
}
