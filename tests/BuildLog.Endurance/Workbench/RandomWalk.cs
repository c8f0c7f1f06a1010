using System.Diagnostics;
using BuildLog.Data.Files;
using BuildLog.Gearing.Languages;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;

namespace BuildLog.Endurance.Workbench;

/// <summary>Keys that chance takes, pressed in the workbench: acts, forms, texts, pages, and another size of the screen now and then. No exception, no key without an answer, and the record sound after it.</summary>
internal sealed class RandomWalk(Language language) : IOrdeal
{
    private static readonly TimeSpan Hung = TimeSpan.FromSeconds(60);

    private static readonly Key[] Moves =
    [
        Key.CursorUp, Key.CursorDown, Key.CursorLeft, Key.CursorRight, Key.Home, Key.End, Key.PageUp, Key.PageDown, Key.Tab, Key.Tab.WithShift, Key.Enter, Key.Enter, Key.Enter, Key.Esc, Key.Esc, Key.Space, Key.Backspace,
        Key.Delete, Key.F1, Key.S.WithCtrl, Key.S.WithCtrl, Key.S.WithCtrl,
    ];

    private static readonly string[] Texts = ["10:20.5", "3:6125 mm", "4.10", "205/65R15", "3 May 2026", "110 km/h", "2400", "Brindle", "41/10", "12.50", "½", "Ä€", "999999999", "-1", "axle", "2:30", "7 1/4 in"];

    private static readonly (int Width, int Height)[] Sizes = [(80, 24), (120, 36), (60, 18), (40, 10), (200, 60)];

    public string Name => $"random keys in the workbench, in {language.Tag}";

    public Survival Run(int rounds)
    {
        using var spoken = language.Speak();
        var (troubles, pressed, chance) = (new List<string>(), 0, new Random(20_260_503));
        var lately = new Queue<string>();
        long held = 0, more = 0;
        var slowest = TimeSpan.Zero;
        using (var bench = new Bench())
        {
            var since = Stopwatch.StartNew();
            using var watchman = new Timer(_ =>
            {
                if (since.Elapsed > Hung) Environment.FailFast($"No answer for {Hung.TotalSeconds} s after {string.Join(' ', lately)}");
            }, null, Hung, TimeSpan.FromSeconds(5));
            bench.Run(
                () =>
                {
                    if (pressed > 0 && since.Elapsed > slowest) slowest = since.Elapsed;
                    since.Restart();
                    if (pressed == rounds / 4) held = Memory.Held();
                    if (pressed++ == rounds) return false;
                    var (said, press) = Next(bench, chance);
                    lately.Enqueue(said);
                    if (lately.Count > 40) lately.Dequeue();
                    press();
                    bench.Clock.Advance(TimeSpan.FromMilliseconds(200));
                    bench.Screen.Advance(TimeSpan.FromMilliseconds(20));
                    return true;
                },
                error => troubles.Add($"{error.GetType().Name}: {error.Message} {error.StackTrace?.Split('\n').FirstOrDefault(line => line.Contains("BuildLog", StringComparison.Ordinal))?.Trim()} after {string.Join(' ', lately)}"));
            more = Memory.Held() - held;
            if (rounds >= 10_000 && more > Memory.Flat) troubles.Add($"memory grew by {Memory.Mebibytes(more)} over the last three quarters");
            troubles.AddRange(RecordCheck.Of(bench.Shop.Path).Troubles());
            foreach (var vehicle in bench.Shop.Vehicles()) _ = bench.Shop.History(vehicle);
            var changes = bench.Shop.Changes(most: 1)[0].Id;
            return new(rounds, troubles, FormattableString.Invariant($"keys; {changes} changes in the record at the end, slowest turn {slowest.TotalMilliseconds:0} ms, memory {Memory.Mebibytes(held)} after a quarter and {Memory.Mebibytes(more)} more at the end"));
        }
    }

    // Letters are acts on the workbench and text in a form; q and Ctrl+Q would only end the walk.
    private static (string Said, Action Press) Next(Bench bench, Random chance)
    {
        switch (chance.Next(100))
        {
            case < 35: return Pressed(bench, Moves[chance.Next(Moves.Length)]);
            case < 70:
                const string letters = "abcdefghijklmnoprstuvwxyz";
                return Pressed(bench, (Key)letters[chance.Next(letters.Length)]);
            case < 85: return Pressed(bench, (Key)(char)('0' + chance.Next(10)));
            case < 92:
                var text = Texts[chance.Next(Texts.Length)];
                return ($"“{text}”", () => { foreach (var c in text) bench.Screen.App.InjectKey(new Key(c)); });
            case < 99: return Pressed(bench, (Key)"/?+.,:;-=()!"[chance.Next(12)]);
            default:
                var (width, height) = Sizes[chance.Next(Sizes.Length)];
                return (FormattableString.Invariant($"{width}×{height}"), () => bench.Screen.Resize(width, height));
        }
    }

    private static (string Said, Action Press) Pressed(Bench bench, Key key) => (key.ToString(), () => bench.Screen.App.InjectKey(key));
}
