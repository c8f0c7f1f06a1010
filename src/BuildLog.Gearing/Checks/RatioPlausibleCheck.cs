using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.Checks;

/// <summary>Each ratio is one that such a part usually has; where it is not, the slip that would explain it is asked about.</summary>
/// <remarks>
/// <code>axle without hubs 2.2 to 7.2;   first gear 2.2 to 7.1, top 0.50 to 1.10, each gear below the one before;   overdrive 0.50 to 0.95;   transfer case high 1.00 to 1.25, low 1.9 to 4.3;   two-speed axle low over high 1.33 to 1.45</code>
/// <para>
/// Verdict: the 95 % interval against the usual ratios of light vehicles. All of them are from memory, so the worst it says is watch: crawler gears and
/// trucks lie outside and are right. Gearboxes of one or two gears are not judged by their ends.
/// </para>
/// <para>
/// A three-speed automatic's first gear follows from second and reverse: the one that is typed, else the usual 1.7 to 2.7. See <see cref="SimpsonTrain"/>; another build is not
/// bound so, hence never more than a watch.
/// </para>
/// <para>Cures: the questions of <see cref="RatioTraps"/>, each with the ratio it would be. Source: common practice, from memory.</para>
/// </remarks>
internal sealed class RatioPlausibleCheck : ICheck
{
    private const int FewestGears = 3;

    internal static readonly Window UsualFirst = new(2.2, 7.1);
    internal static readonly Window UsualReverse = new(1.7, 2.7);
    internal static readonly Window UsualOverdrive = new(0.50, 0.95);
    internal static readonly Window UsualHigh = new(1.00, 1.25);
    internal static readonly Window UsualLow = new(1.9, 4.3);

    public string Id => "ratio";

    public string Title => Spoken("Ratio plausible");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Transmission is { } box) yield return Gearbox(box);
        if (driveline.Overdrive is { } unit) yield return Overdrive(unit);
        if (driveline.TransferCase is { } transfer)
        {
            yield return Part(Position.TransferCase, transfer.High, UsualHigh, Spoken("count the transfer case in high: ten output turns"), Spoken("transfer case's high"));
            if (transfer.Low is { } low) yield return Part(Position.TransferCase, low, UsualLow, "", Spoken("transfer case's low"));
        }

        foreach (var finding in Axles(driveline)) yield return finding;
    }

    private IEnumerable<Finding> Axles(Driveline driveline)
    {
        foreach (var (axle, position) in ((Axle?, Position)[])[(driveline.RearAxle, Position.RearAxle), (driveline.FrontAxle, Position.FrontAxle)])
        {
            if (axle is not null) yield return Axle(axle, position);
            if (axle?.LowStep is { } step) yield return Part(position, step, TwoSpeedAxle.UsualStep, "", Spoken($"{position.InWords()}'s low over high"));
        }
    }

    // A share names the drop of engine speed or the gain of road speed, and nobody says which.
    private Finding Overdrive(Overdrive unit)
    {
        var finding = Part(Position.Overdrive, unit.Ratio, UsualOverdrive, Spoken("enter the overdrive's ratio, or count it: ten output turns"));
        if (unit.Ratio?.Value.Value == 1)
            return finding with { Advice = [Spoken("is 1 its ratio with the unit out? Engaged it turns what is behind it faster, such as 0.78: enter that, or count it")] };

        return unit.Ratio is { } ratio && ratio.Says.EndsWith('%')
            ? finding with
            {
                Verdict = Verdict.Watch,
                Because = Because.UnverifiedLimit,
                Sentence = $"{finding.Sentence} It is sold as {ratio.Says}.",
                Advice = Questions([OverdriveUnit.Ask(1 - ratio.Value.Value)], [Spoken("count it: ten output turns")]),
            }
            : finding;
    }

    private Finding Axle(Axle axle, Position position)
    {
        var differential = axle.Ratio is { } ratio ? ratio with { Value = ratio.Value / (axle.HubReduction?.Value ?? 1) } : null;
        var finding = Part(position, differential, RatioTraps.UsualAxle, Spoken("count the axle's turns: ten wheel turns, one wheel held"), axle.HubReduction is null ? null : Spoken($"{position.InWords()}'s differential"));
        return finding.Verdict == Verdict.Watch
            ? finding with { Advice = Questions(RatioTraps.OfAxle(differential!.Value.Value, differential.Source == Source.TeethCounted, told: differential.Source != Source.Measured), finding.Advice) }
            : finding;
    }

    private Finding Gearbox(Transmission box)
    {
        if (box.Gears.Count == 0) return Open(Position.Transmission, Spoken("gearbox"), Spoken("enter the gear ratios, or count them: ten output turns in each gear"));

        var traps = RatioTraps.OfGears([.. box.Gears.Select(gear => (gear.Name, gear.Ratio.Value.Value))]).ToList();
        if (FirstRise(box.Gears) is { } rise)
        {
            return Say(Position.Transmission, Verdict.Watch, Because.UnverifiedLimit, $"Gear {rise.Name} is not faster than the gear before it.") with
            {
                Value = rise.Ratio.Value,
                Advice = Questions(traps, [$"count gear {rise.Name}: ten output turns"]),
            };
        }

        if (box.Gears.Count < FewestGears || box is not { First: { } lowest, Top: { } highest }) return Say(Position.Transmission, Verdict.Fits, Because.Inside, Spoken("Each gear is faster than the one before."));

        var first = Part(Position.Transmission, lowest.Ratio, UsualFirst, "", Spoken($"gearbox's {lowest.Name} gear"));
        var top = Part(Position.Transmission, highest.Ratio, PartsMade.UsualTop, "", Spoken($"gearbox's {highest.Name} gear"));
        var worse = first.Verdict == Verdict.Watch ? first : top;
        return TwoSets(box) is { } apart ? apart
            : worse.Verdict == Verdict.Watch
            ? worse with { Advice = Questions(traps, worse.Advice) }
            : Say(Position.Transmission, Verdict.Fits, Because.Inside, Spoken("First and top gear are usual ones, and each gear is faster than the one before."));
    }

    // Two planetary sets on one sun shaft leave first gear no choice beside second and reverse.
    private Finding? TwoSets(Transmission box)
    {
        if (box is not { Untold: null, Converter: not null, Gears: [{ Ratio: { Value: { } first } known }, { Ratio.Value: { } second }, { Ratio.Value.Value: 1 }] }) return null;
        if (box.Reverse is { } reverse) return BesideReverse(first, second, reverse.Value);
        if (known.Source == Source.TeethCounted) return null;

        var usual = new Window(SimpsonTrain.FirstBeside(second, UsualReverse.Low).Value, SimpsonTrain.FirstBeside(second, UsualReverse.High).Value);
        return Verdicts.Judge(first, usual, limitIsVerified: false).Verdict == Verdict.Fits ? null
            : Say(Position.Transmission, Verdict.Watch, Because.UnverifiedLimit,
                $"Beside a second gear of {Rounded.WithInterval(second, Units.One)} a three-speed automatic has a first of {usual.InWords(Units.One)}, not {Rounded.WithInterval(first, Units.One)}.") with
            {
                Value = first,
                Wanted = usual,
                Advice = [Spoken("read both ratios on the data sheet again, with reverse: first = second + (second − 1) · reverse"), Spoken("count the teeth of its planetary sets")],
            };
    }

    private Finding? BesideReverse(Measured first, Measured second, Measured reverse)
    {
        if (SimpsonTrain.CanBe(first, second, reverse)) return null;

        var expected = SimpsonTrain.FirstBeside(second, reverse);
        var wanted = new Window(expected.Interval95.Low, expected.Interval95.High);
        return Say(Position.Transmission, Verdict.Watch, Because.UnverifiedLimit,
            $"Beside a second gear of {Rounded.WithInterval(second, Units.One)} and a reverse of {Rounded.WithInterval(reverse, Units.One)} a three-speed automatic of two planetary sets has a first of {Rounded.WithInterval(expected, Units.One)}, not {Rounded.WithInterval(first, Units.One)}.") with
        {
            Value = first,
            Wanted = wanted,
            Advice =
            [
                $"read first, second and reverse on the data sheet again: first = {Rounded.WithInterval(expected, Units.One)} would agree, or a reverse of {Rounded.WithInterval((first - second) / (second - 1), Units.One)}",
                Spoken("count the teeth of its planetary sets; a box of another build is not bound so"),
            ],
        };
    }

    private Finding Part(Position position, Known? ratio, Window usual, string cure, string? name = null)
    {
        name ??= position.InWords();
        if (ratio is null) return Open(position, name, cure);

        var (verdict, because) = Verdicts.Judge(ratio.Value, usual, limitIsVerified: false);
        var common = verdict == Verdict.Fits ? Spoken("is a usual one") : because == Because.Uncertainty ? Spoken("may be no usual one") : Spoken("is no usual one");
        var says = Spoken($"The {name} ratio {Rounded.WithInterval(ratio.Value, Units.One)} {common}: {usual.InWords(Units.One)}.");
        return Say(position, verdict, because, says) with
        {
            Value = ratio.Value,
            Wanted = usual,
            Advice = verdict == Verdict.Watch ? [Count(position, ratio.Source)] : [],
            SettledBy = because == Because.Uncertainty ? Settling.Of(ratio.Value, usual) : null,
        };
    }

    private static string Count(Position position, Source source)
    {
        var turns = position is Position.RearAxle or Position.FrontAxle ? Spoken("twenty wheel turns, and note how the other wheel turned") : Spoken("ten output turns");
        return source switch
        {
            Source.TeethCounted => Spoken("count the teeth once more"),
            Source.Measured => Spoken($"count it once more: {turns}"),
            _ => Spoken($"count it: {turns}"),
        };
    }

    private Finding Open(Position position, string name, string cure)
        => Say(position, Verdict.Open, Because.MissingInput, $"The {name} ratio is not known.") with { Advice = [cure] };

    private Finding Say(Position position, Verdict verdict, Because because, Sentence says)
        => this.Plain([position], verdict, because, says, Spoken("usual ratios of light vehicles, from memory")) with { LimitIsVerified = false };

    private static IReadOnlyList<Sentence> Questions(IEnumerable<RatioQuestion> traps, IReadOnlyList<Sentence> otherwise)
        => [.. traps.Select(trap => trap.InWords()), .. otherwise];

    private static Gear? FirstRise(IReadOnlyList<Gear> gears)
        => gears.Zip(gears.Skip(1)).FirstOrDefault(pair => pair.Second.Ratio.Value.Value >= pair.First.Ratio.Value.Value).Second;
}
