using BuildLog.Data.Files;
using Terminal.Gui.Input;
using Terminal.Gui.Testing;

namespace BuildLog.Endurance.Workbench;

/// <summary>A workbench that is left open: hour after hour of the clock, midnight in it, a look at a vehicle and its pages every ten minutes. Memory stays flat.</summary>
internal sealed class LongDay : IOrdeal
{
    private const int SecondsOfATurn = 10;
    private const int TurnsOfAnHour = 3600 / SecondsOfATurn;
    private const int TurnsBetweenLooks = 600 / SecondsOfATurn;

    private static readonly Key[] Look = [Key.Esc, (Key)'w', Key.CursorDown, Key.Enter, (Key)'1', (Key)'2', (Key)'3', (Key)'4', (Key)'5', (Key)'6', (Key)'9', (Key)'0'];

    public string Name => "hours of virtual time";

    public Survival Run(int rounds)
    {
        var (troubles, turns, looks) = (new List<string>(), 0, 0);
        long held = 0;
        using var bench = new Bench();
        var keys = new Queue<Key>();
        bench.Run(
            () =>
            {
                if (turns == rounds * TurnsOfAnHour / 4) held = Memory.Held();
                if (turns++ == rounds * TurnsOfAnHour) return false;
                if (turns % TurnsBetweenLooks == 0)
                {
                    looks++;
                    foreach (var key in Look) keys.Enqueue(key);
                }

                if (keys.TryDequeue(out var next)) bench.Screen.App.InjectKey(next);
                bench.Clock.Advance(TimeSpan.FromSeconds(SecondsOfATurn));
                bench.Screen.Advance(TimeSpan.FromSeconds(SecondsOfATurn));
                return true;
            },
            error => troubles.Add($"{error.GetType().Name}: {error.Message}"));
        var more = Memory.Held() - held;
        if (more > Memory.Flat) troubles.Add($"memory grew by {Memory.Mebibytes(more)} over the last three quarters");
        troubles.AddRange(RecordCheck.Of(bench.Shop.Path).Troubles());
        return new(rounds, troubles, FormattableString.Invariant($"hours, {looks} looks; memory {Memory.Mebibytes(held)} after a quarter and {Memory.Mebibytes(more)} more at the end"));
    }
}
