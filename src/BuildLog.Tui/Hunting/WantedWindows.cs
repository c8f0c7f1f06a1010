using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Hunting;

/// <summary>What the windows of a driveline are as windows of a part that is hunted.</summary>
internal static class WantedWindows
{
    private const double Rounding = 0.002;

    /// <summary>The kind that is hunted for a place in the driveline.</summary>
    public static WantedKind Kind(Position position) => position switch
    {
        Position.Engine => WantedKind.Engine,
        Position.Transmission => WantedKind.Transmission,
        Position.Overdrive => WantedKind.Overdrive,
        Position.TransferCase => WantedKind.TransferCase,
        Position.Propshaft or Position.FrontPropshaft => WantedKind.Propshaft,
        Position.RearAxle or Position.FrontAxle => WantedKind.Axle,
        Position.Tyres or Position.FrontTyres => WantedKind.Tyres,
        Position.Speedometer => WantedKind.Speedometer,
        _ => throw new ArgumentOutOfRangeException(nameof(position), position, "No such position."),
    };

    /// <summary>What today's goals and limits leave such a part on what it is judged on; none where nothing wanted depends on it.</summary>
    public static IEnumerable<WindowOfPart> Today(HuntBench hunt)
        => HuntedPlace.Of(hunt.Bench.Driveline, hunt.Wanted) is { } place ? At(hunt.Bench, place).Where(window => Quantity(window) is not null) : [];

    /// <summary>What goals and limits leave whatever comes to a place. It is another part than the fitted one: what the fitted gearbox calls its top gear says nothing of that of another.</summary>
    public static IEnumerable<WindowOfPart> At(VehicleOnBench bench, Position place)
        => DrivelineWindows.Of(bench.Driveline, bench.Goals, bench.Findings).Where(window => window.Position == place)
            .Select(window => window.IsOfTopGear ? window with { Quantity = WindowOf.TopGearRatio.InWords() } : window);

    /// <summary>That a window which is kept reaches beyond what would do today; null where it lies inside, or where nobody knows what would do.</summary>
    public static string? Doubt(IReadOnlyList<WindowOfPart> today, IReadOnlyList<WantedWindow> kept, UnitSystem units)
    {
        foreach (var window in today)
        {
            if (kept.FirstOrDefault(each => each.Quantity == Quantity(window)) is not { } own) continue;

            var (shown, wide) = (units.Shown(window.Unit), own.Read());
            if (window.Window.IsEmpty || !wide.Overlaps(window.Window)) return Spoken($"None of it would do today: {(window with { Unit = shown }).InWords()}.");
            if (!Reaches(wide, window.Window)) continue;
            return Spoken($"It reaches beyond what would do today, {window.Window.InWords(shown)}.");
        }

        return null;
    }

    // A window that was rounded outwards as it was kept reaches no further.
    private static bool Reaches(Window own, Window today)
        => (double.IsFinite(today.Low) && own.Low < today.Low * (1 - Rounding)) || (double.IsFinite(today.High) && own.High > today.High * (1 + Rounding));

    /// <summary>What of a wanted part such a window limits; null for nothing that is hunted by a number.</summary>
    public static WindowOf? Quantity(WindowOfPart part) => part.Position switch
    {
        Position.RearAxle or Position.FrontAxle => WindowOf.AxleRatio,
        Position.Overdrive => WindowOf.OverdriveRatio,
        Position.Transmission when part.IsOfTopGear => WindowOf.TopGearRatio,
        Position.Tyres => WindowOf.Circumference,
        _ => null,
    };

    /// <summary>What such a number is told in.</summary>
    public static Unit UnitOf(WindowOf quantity) => quantity is WindowOf.AxleRatio or WindowOf.TopGearRatio or WindowOf.OverdriveRatio or WindowOf.LowRangeRatio ? Units.One : Units.Metre;

    /// <summary>The window as it is kept with a wanted part, a digit finer than it is shown and rounded outwards, so that it refuses nothing that would do; null for what no wanted part is limited by, or where nothing is left.</summary>
    public static WantedWindow? Of(WindowOfPart part)
        => Quantity(part) is { } of && !part.Window.IsEmpty ? Kept(of, part.Window) : null;

    /// <summary><c>2.85 to 3.21</c>, <c>at most 3.21</c>.</summary>
    public static string InWords(this WantedWindow window, UnitSystem units)
    {
        string In(string side) => side.Length == 0 ? "" : units.InWords(window.Quantity.Read(side).OrRefuse());

        var (low, high) = (In(window.Low), In(window.High));
        return (low.Length, high.Length) switch
        {
            (0, _) => Spoken($"at most {high}"),
            (_, 0) => Spoken($"at least {low}"),
            _ => Spoken($"{WithoutUnit(low, high)} to {high}"),
        };
    }

    // "1.862 m to 2.057 m" names its unit once.
    private static string WithoutUnit(string low, string high)
        => low.LastIndexOf(' ') is > 0 and var at && high.EndsWith(low[at..], StringComparison.Ordinal) ? low[..at] : low;

    private static WantedWindow? Kept(WindowOf quantity, Window window)
    {
        var (unit, places) = quantity == WindowOf.Circumference ? (Units.Metre, 4) : (Units.One, 3);
        var fine = Math.Pow(10, places);
        string Text(double side) => $"{Rounded.Typed(side, places)} {unit.Symbol}".TrimEnd();
        var low = window.Low > 0 ? Text(Math.Floor(window.Low * fine) / fine) : "";
        var high = double.IsFinite(window.High) ? Text(Math.Ceiling(window.High * fine) / fine) : "";
        return low.Length + high.Length == 0 ? null : new(quantity, low, high);
    }
}
