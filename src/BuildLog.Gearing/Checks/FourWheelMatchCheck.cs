using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>Front and rear wheels go the same way in a turn of the transfer case.</summary>
/// <remarks>
/// By the rolling circumferences. A roll-out is done at walking pace, so where both ends were rolled out it is held against the crawl's limit too: beyond that a watch,
/// as the source has that limit for loaded radii, beyond the one at speed a clash. Four tyres of one set cancel in both formulas, and both limits hold. Where one end was not rolled
/// out, and both loaded radii were measured, they tell the crawl as the source has it, and may only warn: a radial's belt keeps its length, whatever the load makes of the axle's height.
/// Formulas, limits by drive and source see <see cref="FourWheelMatch"/>. A ratio that would do is one that matches both at speed and crawling. Tyres of one size are
/// no reason to change gears that match. Where the drive is not known, what suits the strictest of the maker's three suits all of them.
/// </remarks>
internal sealed class FourWheelMatchCheck : ICheck
{
    private static string Limit => Spoken("a transfer case maker's manual, by the kind of drive");

    public string Id => "four-wheel-match";

    public string Title => Spoken("Front against rear axle");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline is not { TransferCase: { } box, FrontAxle: { } front, RearAxle: { } rear, Tyres: { } tyres }) yield break;

        var ahead = tyres.On(Position.FrontAxle);
        IReadOnlyList<Position> joint = [Position.FrontAxle, Position.RearAxle];
        if (front.Ratio is not { } frontRatio || rear.Ratio is not { } rearRatio)
        {
            yield return this.Open(joint, Spoken("Whether the axles match"), [.. Lacking(front, rear)], Limit);
            yield break;
        }

        var same = ahead == tyres;
        if (AtSpeed(tyres, frontRatio, rearRatio) is not { } high)
        {
            yield return this.Open(joint, Spoken("Whether the axles match"), [new(Spoken("not both pairs of tyres are rolled out"), Spoken("roll out a front and a rear tyre, the vehicle standing on them"))], Limit);
            yield break;
        }

        var limits = FourWheelMatch.Limits(box.FrontDrive ?? FrontDrive.ThroughShaft);
        var rolled = !same && IsRolledOut(ahead) && IsRolledOut(tyres);
        List<Mismatch> all =
        [
            same ? new(high, Math.Min(limits.Low, limits.High), Spoken("at any speed"))
                : rolled ? new(high, limits.Low, Spoken("by the roll-outs, at walking pace")) { Clashes = limits.High }
                : new(high, limits.High, Spoken("at speed")),
        ];
        if (!same && !rolled && ahead.LoadedRadius is { } frontRadius && tyres.LoadedRadius is { } rearRadius)
            all.Add(new(FourWheelMatch.LowSpeed(frontRadius.Value, rearRadius.Value, frontRatio.Value, rearRatio.Value), limits.Low, Spoken("crawling, by the loaded radii")) { MayOnlyWarn = true });

        var gears = Math.Abs(FourWheelMatch.HighSpeed(1, 1, frontRatio.Value, rearRatio.Value).Value);
        var gearsMatch = all.All(one => gears <= one.Limit);
        var sizesMatch = ahead.Size is { } size && size.Designation == tyres.Size?.Designation;
        IReadOnlyList<PartWindow> windows = [.. Matching(all, frontRatio.Value, rearRatio.Value).Where(window => !window.Window.IsEmpty)];
        IReadOnlyList<Sentence> cures = [.. same ? [] : OfTyres(sizesMatch, gearsMatch, windows.Count > 0, all.Min(one => one.Limit) - gears - high.Expanded95)];

        // Tyres of one size are no reason to change gears that match.
        var ofTyres = sizesMatch && gearsMatch && !same;
        foreach (var finding in all.Select(one => Judge(joint, box.FrontDrive, one, windows, cures)))
            yield return ofTyres && finding.Verdict != Verdict.Fits ? finding with { Windows = [] } : finding;
    }

    /// <summary>The mismatch by the circumferences; null for one axle, or where a number is not known.</summary>
    internal static Measured? AtSpeed(Driveline driveline)
        => driveline is { TransferCase: not null, FrontAxle.Ratio: { } front, RearAxle.Ratio: { } rear, Tyres: { } tyres } ? AtSpeed(tyres, front, rear) : null;

    // Four tyres of one set roll alike, whatever their circumference is.
    private static Measured? AtSpeed(TyreSet tyres, Known front, Known rear)
    {
        var ahead = tyres.On(Position.FrontAxle);
        return ahead == tyres ? FourWheelMatch.HighSpeed(1, 1, front.Value, rear.Value)
            : ahead.RollingCircumference is { } frontRolls && tyres.RollingCircumference is { } rearRolls ? FourWheelMatch.HighSpeed(frontRolls.Value, rearRolls.Value, front.Value, rear.Value)
            : null;
    }

    private static bool IsRolledOut(TyreSet tyres) => tyres.RollingCircumference is { Source: Source.Measured };

    // Gears that do not match are no matter of the tyres.
    private static IEnumerable<Sentence> OfTyres(bool sizesMatch, bool gearsMatch, bool ratiosDo, double room)
    {
        if (sizesMatch && gearsMatch)
        {
            var tenths = Math.Floor(room * 1000);
            yield return tenths > 0
                ? Spoken($"tyres of one size, alike in pressure, load and wear: roll-outs in front and behind within {Rounded.Fixed(tenths / 10, 1)} % of each other")
                : Spoken("tyres of one size, alike in pressure, load and wear, and both ends rolled out over ten turns");
        }
        else if (gearsMatch)
        {
            yield return Spoken("one size of tyre on all wheels");
        }
        else if (!ratiosDo)
        {
            yield return Spoken("tyres in front and behind that match in circumference and in loaded radius alike: no axle ratio makes these match both at speed and crawling");
        }
    }

    private Finding Judge(IReadOnlyList<Position> joint, FrontDrive? drive, Mismatch one, IReadOnlyList<PartWindow> windows, IReadOnlyList<Sentence> cures)
    {
        var (mismatch, limit, when) = one;
        var (wanted, limits) = (new Window(-limit, limit), one.Limits);
        var judged = limits.Judge(mismatch, !one.MayOnlyWarn && (drive is null || FourWheelMatch.LimitIsVerified(drive.Value)));
        if (drive is null && judged.Verdict != Verdict.Fits)
        {
            return this.Open(
                joint, Spoken($"Whether rear wheels that go {Further(mismatch)} than the front ones {when} are allowed"),
                [new(Spoken("how the front axle is joined is not known"), Spoken("say whether the front axle is always joined, engaged by hand, or behind a centre differential"))], Limit);
        }

        return this.Judged(new(
            joint, mismatch, Units.PercentUnit, wanted,
            $"In a turn of the transfer case the rear wheels go {Further(mismatch)} than the front ones {when}; wanted -{Rounded.Exact(limit * 100)} to {Rounded.Exact(limit * 100)} %.",
            Limit)
        {
            ByLimits = judged,
            Reaches = limits.Straddled(mismatch),
            Windows = windows,
            Cures = cures,
        });
    }

    // mismatch = 1 − q · i_front / i_rear: either axle may be the one that is changed, and what it becomes has to match in every way at once.
    private static IEnumerable<PartWindow> Matching(IReadOnlyList<Mismatch> all, Measured front, Measured rear)
    {
        yield return all.Select(one => PartWindow.Proportional(Position.FrontAxle, Spoken($"{Position.FrontAxle.InWords()} ratio"), Units.One, (1 - one.Share) / front, one.Matching)).Aggregate((a, b) => a.And(b));
        yield return all.Select(one => PartWindow.Inverse(Position.RearAxle, Spoken($"{Position.RearAxle.InWords()} ratio"), Units.One, (1 - one.Share) * rear, one.Matching)).Aggregate((a, b) => a.And(b));
    }

    private sealed record Mismatch(Measured Share, double Limit, string When)
    {
        public bool MayOnlyWarn { get; init; }

        /// <summary>Beyond it is a clash, where that is further than what is wanted.</summary>
        public double Clashes { get; init; } = Limit;

        public TwoLimits Limits => new(new(-Limit, Limit), new(-Clashes, Clashes));

        public Window Matching => new(1 - Limit, 1 + Limit);
    }

    // The mismatch is a share of the front wheels' way, so it is the rear ones that are told.
    private static Sentence Further(Measured mismatch)
        => mismatch.Value < 0 ? Said.As($"{Said.Number(-mismatch, Units.PercentUnit, 1)} further") : Said.As($"{Said.Number(mismatch, Units.PercentUnit, 1)} less far");

    private static IEnumerable<Missing> Lacking(Axle front, Axle rear)
    {
        if (front.Ratio is null) yield return new(Spoken("the front axle ratio is not known"), Spoken("count the front axle's turns: ten wheel turns, one wheel held, hubs engaged"));
        if (rear.Ratio is null) yield return new(Spoken("the axle ratio is not known"), Spoken("count the axle's turns: ten wheel turns, one wheel held"));
    }
}
