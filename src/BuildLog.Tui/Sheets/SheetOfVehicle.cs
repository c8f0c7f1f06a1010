using BuildLog.Data.Components;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Fitments;
using BuildLog.Data.Sessions;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Speeds;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Measurements;
using BuildLog.Tui.Options;
using BuildLog.Tui.Papers;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Sheets;

/// <summary>A vehicle on the bench as the content of its build sheet: the same results the screen shows, worded for paper.</summary>
public static class SheetOfVehicle
{
    private static string NotKnownYet => Spoken("not known yet");

    // In a narrow column a number and its unit stay together.
    private const char NoBreak = '\u00a0';

    /// <param name="bench">The vehicle.</param>
    /// <param name="folder">What else the shop keeps of it.</param>
    /// <param name="wishes">How it is wanted.</param>
    /// <param name="units">The units to print.</param>
    /// <param name="printed">The time that stands on it.</param>
    public static SheetContent Content(VehicleOnBench bench, VehicleFolder folder, SheetWishes wishes, UnitSystem units, DateTimeOffset printed)
    {
        var span = new AccountSpan(wishes.From, null);
        var speeds = SpeedsWords.Of(bench.Driveline, bench.Goals, units);
        return new()
        {
            Id = bench.Vehicle.Uid,
            Created = printed,
            Reader = wishes.Reader,
            Paper = wishes.Paper,
            PrintedOn = DayText.InWords(printed),
            Vehicle = Title(bench, folder),
            TitlePhoto = PhotosOfVehicle.Title(folder, bench.Vehicle.Uid),
            Driveline = [.. bench.Fitted.Fitted.Select(fitment => Row(bench.Fitted, fitment, units))],
            KeyFigures = [.. KeyFigures(bench, units)],
            PowerAndValue = [.. PowerAndValueOfVehicle.Of(bench, folder, units)],
            CruiseGoal = bench.Goals.Cruise is [var goal, ..] ? GoalWords.InWords(goal) : null,
            Judged = Judged(bench.Findings),
            Speeds = speeds.Missing is null ? Table(speeds, bench, units) : null,
            Sawtooth = speeds.Chart,
            Pull = PullOfVehicle.Of(bench.Driveline, units),
            PullLacks = PullCurves.Lacks(bench.Driveline) is [_, ..] lacking ? string.Join(", ", lacking) : null,
            Speedometer = SpeedometerOfVehicle.Of(bench, units),
            RunningGear = RunningGearOfVehicle.Of(bench.Driveline, units),
            Propshafts = [.. PropshaftsOfVehicle.Of(bench)],
            Findings = [.. Findings(bench.Findings, units)],
            PartWindows = [.. DrivelineWindows.Of(bench.Driveline, bench.Goals, bench.Findings).Select(window => WindowWords.Of(window, units))],
            AxleAndTyre = MapWords.IfKnown(bench, units)?.ToRegion(),
            Options = wishes.Compared is { } compared ? ComparisonWords.OnSheet(compared, units) : null,
            Evidence = [.. bench.Sessions.Where(session => wishes.Holds(session.Date)).Select(session => Evidence(session, units))],
            History = [.. bench.History.Where(swap => wishes.Holds(swap.Date)).Reverse().Select(swap => History(swap, bench, units))],
            RoadTests = [.. RoadTestsOfVehicle.Drives(folder, wishes)],
            Tightened = [.. RoadTestsOfVehicle.Tightened(folder, wishes)],
            Work = wishes.Hours ? TimeOfVehicle.Work(folder, span) : null,
            Costs = wishes.Costs ? CostsOfVehicle.Spent(folder, span) : null,
            Photos = [.. PhotosOfVehicle.Rest(folder, bench.Vehicle.Uid)],
            Defects = [.. Says(bench, Verdict.Clash, units), .. RoadTestsOfVehicle.OpenDefects(folder)],
            OpenPoints = [.. Says(bench, Verdict.Open, units)],
            Watched = [.. Says(bench, Verdict.Watch, units)],
            ToDo = [.. ToDo(folder, beforeHandover: true)],
            Unfinished = [.. ToDo(folder, beforeHandover: false), .. folder.Away.Select(work => $"{Sentence(Jobs.JobsWords.Sent(work))}.")],
            Assumptions = [.. Assumptions(bench)],
            Cautions = Cautions.Sheet,
        };
    }

    private static VehicleTitle Title(VehicleOnBench bench, VehicleFolder folder)
    {
        var vehicle = bench.Vehicle;
        return new()
        {
            ShopName = folder.ShopName,
            Name = vehicle.Name,
            Mark = vehicle.ChassisNumber.Length > 0 ? vehicle.ChassisNumber : vehicle.Registration,
            Identity = NumbersOfVehicle.Of(bench, folder),
            Owner = vehicle.Owner,
            State = vehicle.State.InWords(),
            Odometer = bench.History.Select(swap => swap.Odometer).LastOrDefault(odometer => odometer is not null) is { } last ? Spoken($"{last.InWords} at the last swap") : null,
        };
    }

    private static DrivelineRow Row(DrivelineOfDay day, Fitment fitment, UnitSystem units)
    {
        var (says, sources) = fitment.Position == Position.Transmission ? Gears(day.Driveline.Transmission) : Numbers([.. day.Numbers.Where(number => number.Position == fitment.Position)], units);
        return new(Sentence(fitment.Position.InWords()), Part(fitment.Component), says, sources);
    }

    private static (string? Says, string? Sources) Gears(Transmission? box) => box is not { Gears: { Count: > 0 } gears } ? (null, null)
        : (Spoken($"gears {string.Join(", ", gears.Select(gear => Rounded.Fixed(gear.Ratio.Value.Value, 2)))}"), string.Join("; ", gears.Select(gear => gear.Ratio.Source.InWords()).Distinct()));

    private static (string? Says, string? Sources) Numbers(IReadOnlyList<NumberKnown> numbers, UnitSystem units) => numbers.Count == 0 ? (null, null)
        : (string.Join("; ", numbers.Select(number => $"{Named(number.Number)} {units.InWords(number.Used, number.Unit)}")),
            string.Join("; ", numbers.Select(number => Source(number.Used)).Distinct()));

    // "tube wall of piece 1: 2.10 mm", or the two numbers are read as one.
    private static string Named(string number) => char.IsAsciiDigit(number[^1]) ? $"{number}:" : number;

    // The number stamped on it and the size on the tyre are what a buyer compares first.
    private static string Part(Component part)
    {
        var size = part is WheelSetComponent { SizeText.Length: > 0 } wheels && !part.Name.Contains(wheels.SizeText, StringComparison.OrdinalIgnoreCase) ? $", {wheels.SizeText}" : "";
        var number = part.SerialNumber.Length > 0 ? Spoken($", no. {part.SerialNumber}") : "";
        return part.Name + size + number;
    }

    // The evidence behind a number is named; the quoted number itself stands in the column before.
    private static string Source(Known known)
        => known.Says.Length == 0 || (char.IsAsciiDigit(known.Says[0]) && known.Source != Gearing.Measurements.Source.TeethCounted)
            ? known.Source.InWords()
            : $"{known.Source.InWords()}: {known.Says}";

    private static IEnumerable<KeyFigure> KeyFigures(VehicleOnBench bench, UnitSystem units)
    {
        foreach (var goal in bench.Goals.Cruise)
        {
            var n = CruiseCheck.EngineSpeed(bench.Driveline, goal);
            yield return new(Spoken($"Engine speed at {goal.Speed.InWords}"), n is null ? NotKnownYet : Rounded.WithInterval(n, Units.RevolutionPerMinute));
        }

        if (GearSpeeds.Of(bench.Driveline) is { } speeds)
            yield return new(Spoken("Road speed per 1000 rev/min in top"), Rounded.WithInterval(speeds.PerThousand(speeds.Steps[^1]), units.Speed));
        yield return new(Spoken("Axle ratio"), bench.Driveline.DrivingAxle?.Ratio is { } axle ? Rounded.WithInterval(axle.Value, Units.One) : NotKnownYet);
        yield return new(Spoken("Rolling circumference"), bench.Driveline.Tyres?.RollingCircumference is { } tyre ? Rounded.WithInterval(tyre.Value, units.Length) : NotKnownYet);
    }

    // Whoever reads the first page only knows whether something is wrong, and what.
    private static string Judged(IReadOnlyList<Finding> findings)
    {
        var clashes = findings.Where(finding => finding.Verdict == Verdict.Clash).Select(finding => finding.Title).Distinct().ToList();
        return $"{FindingsWords.Count(findings).Summary()}{(clashes.Count > 0 ? Spoken($". What clashes: {string.Join("; ", clashes)}") : "")}.";
    }

    private static SpeedsTable Table(SpeedsModel speeds, VehicleOnBench bench, UnitSystem units)
        => new(
            [Spoken("Gear"), .. speeds.Columns],
            [.. speeds.Rows.Select(row => (IReadOnlyList<string>)[row.Gear, .. row.Cells.Select(cell => cell.Length == 0 ? "–" : cell)])],
            SpeedsWords.Note(bench.Driveline, units) + (speeds.Footnote is { } mark ? $" {mark}." : ""));

    // What the owner asked for and what does not fit is told in full; the rest that fits, by name.
    private static IEnumerable<SheetFinding> Findings(IReadOnlyList<Finding> findings, UnitSystem units)
    {
        foreach (var finding in findings.Where(finding => !IsQuiet(finding))) yield return Finding(finding, units);
        var quiet = findings.Where(IsQuiet).Select(finding => finding.Title).Except(findings.Where(finding => !IsQuiet(finding)).Select(finding => finding.Title)).ToList();
        if (quiet.Count > 0) yield return new(Verdict.Fits.InWords(), Spoken("Also checked"), $"{string.Join("; ", quiet)}.");
    }

    private static bool IsQuiet(Finding finding) => finding.Verdict == Verdict.Fits && finding.Source != Gearing.Checks.Finding.OwnersGoal;

    // How to look at what nobody has looked at is the shop's matter.
    private static SheetFinding Finding(Finding finding, UnitSystem units)
        => new(finding.Verdict.InWords(), finding.Title, finding.SaysIn(units.Shown), finding.Cures.Count == 0 || finding.Check == "not-looked-at" ? null : string.Join(finding.Verdict == Verdict.Open ? "; " : Spoken("; or "), finding.CuresIn(units.Shown)), finding.SettledBy);

    internal static EvidenceEntry Evidence(Session session, UnitSystem units)
    {
        var result = MeasurementsWords.Result(session, units);
        var who = Spoken($"with {session.Helper}");
        return new()
        {
            What = session.Subject,
            Date = session.Day.InWords,
            Method = ReadAs(session) is { } pairs ? $"{session.Method} ({pairs})" : session.Method,
            Who = session.Helper.Length == 0 ? Spoken("the shop") : Spoken($"the shop, {who}"),
            Conditions = string.Join("; ", result.Conditions.Where(condition => condition != who)),
            Readings = session.ReadingsInWords,
            Result = result.InWords,
            ExpandedUncertainty = result.Value.IsExact ? Spoken("none: a count that agrees is exact") : ExpandedUncertainty(result),
            Interval95 = Rounded.Ends(result.Value, result.Unit),
        };
    }

    // What stands on either side of a reading's colon.
    private static string? ReadAs(Session session) => session switch
    {
        TurnCountSession => Spoken("wheel turns : propshaft turns"),
        GearCountSession => Spoken("output turns : input turns"),
        RollOutSession => Spoken("turns : distance"),
        _ => null,
    };

    private static string ExpandedUncertainty(SessionResult result)
        => $"{Rounded.WithUnit(Rounded.HalfWidth(result.Unit.FromBase(result.Value.Expanded95)), result.Unit)} (k = {Rounded.Fixed(result.Value.CoverageFactor, 2)})";

    private static Sheet.Content.HistoryRow History(Swap swap, VehicleOnBench bench, UnitSystem units)
    {
        var effect = swap.Effect(bench.Goals);
        var (before, after) = (HistoryWords.Cruise(effect.Before.CruiseEngineSpeed), HistoryWords.Cruise(effect.After.CruiseEngineSpeed));
        var from = before.Length == 0 ? "" : $"{before.Replace($" {Units.RevolutionPerMinute}", "", StringComparison.Ordinal)} → ";
        var cruise = after.Length == 0 ? "" : before == after ? Spoken($"cruise {after} as before") : Spoken($"cruise {from}{after}");
        return new()
        {
            Date = DayText.InShort(swap.Day),
            Odometer = swap.Odometer?.InWords.Replace(' ', NoBreak),
            Position = Sentence(swap.Position.InWords()),
            Removed = swap.Removed?.Name ?? Spoken("none"),
            Fitted = swap.Fitted?.Name ?? Spoken("none"),
            Reason = swap.Reason,
            Effect = Effect([.. cruise.Length == 0 ? [] : new[] { cruise }, .. SwapWords.Of(effect.Moves, units)]),
        };
    }

    private static string Effect(IReadOnlyList<string> clauses)
        => string.Join("; ", clauses) is { Length: > 0 } said ? said : Spoken("nothing to say yet");

    private static IEnumerable<string> Says(VehicleOnBench bench, Verdict verdict, UnitSystem units)
        => bench.Findings.Where(finding => finding.Verdict == verdict).Select(finding => finding.SaysIn(units.Shown));

    private static IEnumerable<string> ToDo(VehicleFolder folder, bool beforeHandover)
        => folder.Jobs.Where(job => job.BeforeHandover == beforeHandover && job.IsOpen)
            .Select(job => $"{Sentence(job.Title)}{(job.Due is { } due ? Spoken($", due {DayText.InWords(due)}") : "")}.");

    // What rests on a word or a guess is said, not hidden among the measured numbers.
    private static IEnumerable<string> Assumptions(VehicleOnBench bench)
        => bench.Fitted.Doubts.Concat(bench.Fitted.Numbers
            .Where(number => number.Used.Source is Gearing.Measurements.Source.Tag or Gearing.Measurements.Source.OwnersWord or Gearing.Measurements.Source.Assumed)
            .GroupBy(number => (number.Position, number.Used.Source))
            .Select(group => $"{Sentence(group.Key.Position?.InWords() ?? Spoken("vehicle"))}, {string.Join(", ", group.Select(number => number.Number))}: {group.Key.Source.InWords()}."));

    /// <summary>Words as the beginning of a sentence.</summary>
    internal static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
