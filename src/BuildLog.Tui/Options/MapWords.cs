using System.Globalization;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Options;

/// <summary>Axle ratio against tyre circumference as a small map in letters, with the place of what is fitted now.</summary>
/// <param name="Rows">The axle ratios, the highest number first.</param>
/// <param name="Left">The smallest circumference, with its unit.</param>
/// <param name="Right">The largest.</param>
/// <param name="Cells">A letter a pair, a text a row.</param>
internal sealed record MapWords(IReadOnlyList<string> Rows, string Left, string Right, IReadOnlyList<string> Cells)
{
    public const string Key = "F fits  w watch  x clash  ? cannot be said  + what is fitted now";

    private const int Ratios = 13;
    private const double AxleReach = 1.35;
    private const double TyreReach = 1.15;
    private const double Room = 1.05;
    private const int Head = 6;

    /// <param name="bench">The vehicle.</param>
    /// <param name="units">The units of the circumference.</param>
    /// <param name="columns">Circumferences across; odd, so that the one fitted is in the middle.</param>
    /// <exception cref="RefusedException">Axle ratio or circumference is not known.</exception>
    public static MapWords Of(VehicleOnBench bench, UnitSystem units, int columns = 41)
    {
        var driveline = bench.Driveline;
        if (driveline is not { DrivingAxle.Ratio.Value: { } axle, DrivingTyres.RollingCircumference.Value: { } tyre })
            throw new RefusedException("map", "The map needs the axle's ratio and the tyres' circumference: count the axle and roll the tyres out first.", "");

        var (ratios, lengths) = (Reaching(Around(axle.Value, AxleReach), DrivelineWindows.OfAxle(driveline, bench.Goals)?.Window), Around(tyre.Value, TyreReach));
        var region = FeasibleRegion.Of(driveline, bench.Goals, ratios, lengths, Ratios, columns);
        var cells = region.Verdicts.Select(row => row.Select(Letter).ToArray()).ToList();
        cells[NearestTo(region.Axles, axle.Value)][NearestTo(region.Tyres, tyre.Value)] = '+';
        return new(
            [.. region.Axles.Reverse().Select(ratio => ratio.ToString("0.00", CultureInfo.InvariantCulture))],
            Length(lengths.Low, units), Length(lengths.High, units),
            [.. Enumerable.Reverse(cells).Select(row => new string(row))]);
    }

    /// <summary>The map for a terminal.</summary>
    public IReadOnlyList<string> Lines =>
    [
        "axle ratio (down) against rolling circumference (across)",
        .. Rows.Zip(Cells, (row, cells) => $"{row.PadLeft(Head - 1)} {cells}"),
        new string(' ', Head) + Left + Right.PadLeft(Math.Max(Right.Length + 1, Cells[0].Length - Left.Length)),
        Key,
    ];

    /// <summary>The map for paper.</summary>
    public RegionMap ToRegion() => new(Rows, Left, Right, Cells);

    /// <summary>The map, or null where axle ratio or circumference is not known or nothing is wanted that depends on them.</summary>
    public static MapWords? IfKnown(VehicleOnBench bench, UnitSystem units)
        => bench.Goals.Cruise.Count > 0 && Parsed.From(() => Of(bench, units)).Understood(out var map) ? map : null;

    private static Window Around(double value, double reach) => new(value / reach, value * reach);

    // As far as what would do, where that lies further.
    private static Window Reaching(Window around, Window? wanted)
        => wanted is { IsEmpty: false } window
            ? new(double.IsFinite(window.Low) ? Math.Min(around.Low, window.Low / Room) : around.Low, double.IsFinite(window.High) ? Math.Max(around.High, window.High * Room) : around.High)
            : around;

    private static int NearestTo(IReadOnlyList<double> steps, double value) => Enumerable.Range(0, steps.Count).MinBy(k => Math.Abs(steps[k] - value));

    private static char Letter(Verdict verdict) => verdict switch
    {
        Verdict.Fits => 'F',
        Verdict.Watch => 'w',
        Verdict.Clash => 'x',
        Verdict.Open => '?',
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
    };

    private static string Length(double metres, UnitSystem units)
        => Rounded.WithUnit(units.Length.FromBase(metres).ToString("0.00", CultureInfo.InvariantCulture), units.Length);
}
