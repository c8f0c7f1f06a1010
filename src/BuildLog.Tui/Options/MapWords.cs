using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Shell;

namespace BuildLog.Tui.Options;

/// <summary>Axle ratio against tyre circumference as a small map in letters, with the place of what is fitted now.</summary>
/// <param name="Rows">The axle ratios, the highest number first.</param>
/// <param name="Left">The smallest circumference, with its unit.</param>
/// <param name="Right">The largest.</param>
/// <param name="Cells">A letter a pair, a text a row.</param>
internal sealed record MapWords(IReadOnlyList<string> Rows, string Left, string Right, IReadOnlyList<string> Cells)
{
    private const int Columns = 76;
    private const int UsualTyres = 41;
    private const int UsualRatios = 13;
    private const int MostTyres = 101; // finer says no more, and takes longer than a key may
    private const int TyresARatio = 5; // a map of this shape fits a terminal of the usual shape
    private const double AxleReach = 1.08;
    private const double TyreReach = 1.12;
    private const double FurthestTyre = 1.3;
    private const double Margin = 0.3;
    private const int Head = 7;
    private const int BetweenLetters = 5;

    /// <summary>What is fitted now, and what it comes to there.</summary>
    public string Now { get; private init; } = "";

    /// <summary>The same in numbers, the lowest axle ratio first.</summary>
    public required FeasibleRegion Region { get; init; }

    /// <summary>What is taken as exact at each place, and what is not: so an edge here is not the edge of a window, which takes its own part as exact.</summary>
    public static string TakenAs => Spoken("Each axle here is as sure as counted teeth, each tyre as sure as its label says, as a listed size is; the ones fitted at + are as sure as they were measured. What would do for certain takes the part itself as exact.");

    /// <summary>What has to be measured before there is a map; null where nothing is missing.</summary>
    public static Refusal? Refuse(Driveline driveline)
        => driveline is { DrivingAxle.Ratio: not null, DrivingTyres.RollingCircumference: not null } ? null
            : new("map", Spoken("The map needs the axle's ratio and the tyres' circumference: count the axle and roll the tyres out first."), "");

    /// <param name="bench">The vehicle.</param>
    /// <param name="units">The units of the circumference.</param>
    /// <param name="width">Cells across that there are, the head of the rows included; null for the usual map.</param>
    /// <exception cref="RefusedException">Axle ratio or circumference is not known.</exception>
    public static MapWords Of(VehicleOnBench bench, UnitSystem units, int? width = null)
    {
        var (ratiosDown, tyresAcross) = Size(width);
        var (driveline, goals) = (bench.Driveline, bench.Goals);
        if (driveline is not { DrivingAxle.Ratio.Value.Value: var axle, DrivingTyres.RollingCircumference.Value.Value: var tyre }) throw new RefusedException(Refuse(driveline)!);

        var windows = DrivelineWindows.Of(driveline, goals, bench.Findings);
        Window? Wanted(Position position) => windows.FirstOrDefault(window => window.Position == position)?.Window;
        var ratios = OnTheMiddle(Span(axle, AxleReach, double.PositiveInfinity, Wanted(driveline.DrivingPosition)), Wanted(driveline.DrivingPosition), ratiosDown);
        var lengths = Span(tyre, TyreReach, FurthestTyre, Wanted(Position.Tyres));
        var region = FeasibleRegion.Of(driveline, goals, ratios, lengths, ratiosDown, tyresAcross);
        var cells = region.Verdicts.Select(row => row.Select(Letter).ToArray()).ToList();
        cells[NearestTo(region.Axles, axle)][NearestTo(region.Tyres, tyre)] = '+';
        return new(
            [.. region.Axles.Reverse().Select(ratio => ratio.ToString("0.00", Language.Spoken.Culture))],
            Length(lengths.Low, units), Length(lengths.High, units),
            [.. Enumerable.Reverse(cells).Select(row => new string(row))])
        {
            Region = region,
            Now = Spoken($"+  is axle {axle.ToString("0.00", Language.Spoken.Culture)} on {Length(tyre, units)}: {Says(FeasibleRegion.At(driveline, goals, axle, tyre))}."),
        };
    }

    /// <summary>The map for a terminal: what lies where, the letters, and what they mean.</summary>
    public IReadOnlyList<string> Lines => LinesAt(Columns);

    /// <summary>The same in lines no longer than a width.</summary>
    public IReadOnlyList<string> LinesAt(int width) =>
    [
        .. Drawn(ToRegion(), width),
        .. TextFit.Wrap(Now, width),
        .. TextFit.Wrap(TakenAs, width),
        .. Cells.Any(row => row.Contains('F', StringComparison.Ordinal) || row.Contains('w', StringComparison.Ordinal)) ? [] : TextFit.Wrap(Spoken("No axle and tyre of this map meet every wish: another gear or overdrive, or another wish."), width),
    ];

    /// <summary>The map itself in characters, with what its letters mean.</summary>
    public static IReadOnlyList<string> Drawn(RegionMap map, int width = Columns)
    {
        var columns = map.Cells.Select(row => row.Length).DefaultIfEmpty(1).Max();
        return
        [
            Spoken($"{Spoken("axle").PadRight(Head)}rolling circumference of the tyres"),
            $"{Spoken("ratio").PadRight(Head)}{map.Left}{map.Right.PadLeft(Math.Max(map.Right.Length + 1, columns - map.Left.Length))}",
            $"{new string(' ', Head)}{(columns > 1 ? $"|{new string(' ', columns - 2)}|" : "|")}",
            .. map.Rows.Zip(map.Cells, (row, cells) => $"{row.PadLeft(Head - 2)}  {cells}"),
            "",
            .. RegionMap.Letters.Aggregate(new List<string>(), (lines, letter) => Beside(lines, letter, width)),
        ];
    }

    private static List<string> Beside(List<string> lines, string letter, int width)
    {
        if (lines.Count > 0 && TextFit.Width(lines[^1]) + BetweenLetters + TextFit.Width(letter) <= width) lines[^1] += new string(' ', BetweenLetters) + letter;
        else lines.Add(letter);
        return lines;
    }

    // With room more tyres across, and more axles down.
    private static (int Ratios, int Tyres) Size(int? width)
    {
        if (width is not { } cells) return (UsualRatios, UsualTyres);
        var tyres = Math.Clamp(cells - Head, UsualTyres, MostTyres);
        return (Math.Max(tyres / TyresARatio, UsualRatios), tyres);
    }

    /// <summary>The map for paper.</summary>
    public RegionMap ToRegion() => new(Rows, Left, Right, Cells);

    /// <summary>The map, or null where axle ratio or circumference is not known or nothing is wanted that depends on them.</summary>
    public static MapWords? IfKnown(VehicleOnBench bench, UnitSystem units)
        => bench.Goals.Cruise.Count > 0 && Parsed.From(() => Of(bench, units)).Understood(out var map) ? map : null;

    // From what is fitted to what would do, and a margin around both; what would do is left out where it lies further than anything that is made.
    private static Window Span(double fitted, double reach, double furthest, Window? wanted)
    {
        var (low, high) = (fitted / reach, fitted * reach);
        if (wanted is not { IsEmpty: false } window) return new(low, high);

        bool IsNear(double side) => double.IsFinite(side) && side >= fitted / furthest && side <= fitted * furthest;
        var sides = ((double[])[window.Low, window.High]).Where(IsNear).ToList();
        if (sides.Count == 0) return new(low, high);

        var (from, to) = (Math.Min(fitted, sides.Min()), Math.Max(fitted, sides.Max()));
        var margin = Margin * (to - from);
        return new(Math.Min(low, from - margin), Math.Max(high, to + margin));
    }

    // One row lies in the middle of what would do, however narrow that is.
    private static Window OnTheMiddle(Window span, Window? wanted, int ratios)
    {
        if (wanted is not { IsEmpty: false } window || !double.IsFinite(window.Low) || !double.IsFinite(window.High)) return span;

        var step = (span.High - span.Low) / (ratios - 1);
        var middle = (window.Low + window.High) / 2;
        var low = middle - (Math.Round((middle - span.Low) / step) * step);
        return new(low, low + (step * (ratios - 1)));
    }

    private static int NearestTo(IReadOnlyList<double> steps, double value) => Enumerable.Range(0, steps.Count).MinBy(k => Math.Abs(steps[k] - value));

    private static char Letter(Verdict verdict) => verdict switch
    {
        Verdict.Fits => 'F',
        Verdict.Watch => 'w',
        Verdict.Clash => 'x',
        Verdict.Open => '?',
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "Not a verdict."),
    };

    private static string Says(Verdict verdict) => RegionMap.Letters.First(meaning => meaning[0] == Letter(verdict))[2..];

    private static string Length(double metres, UnitSystem units)
        => Rounded.WithUnit(units.Length.FromBase(metres).ToString("0.00", Language.Spoken.Culture), units.Length);
}
