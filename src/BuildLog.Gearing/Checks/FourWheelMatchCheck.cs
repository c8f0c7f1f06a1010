using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>Front and rear wheels go the same way in a turn of the transfer case.</summary>
/// <remarks>
/// At low speed by the loaded radii, where both are measured; at high speed by the rolling circumferences. Formulas, limits by drive and source see
/// <see cref="FourWheelMatch"/>. Where the drive is not known, what suits the strictest of the maker's three suits all of them.
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

        // Four tyres of one set roll alike, whatever their circumference is.
        var (same, rolls) = (ahead == tyres, (Front: ahead.RollingCircumference?.Value, Rear: tyres.RollingCircumference?.Value));
        if (!same && (rolls.Front is null || rolls.Rear is null))
        {
            yield return this.Open(joint, Spoken("Whether the axles match"), [new(Spoken("not both pairs of tyres are rolled out"), Spoken("roll out a front and a rear tyre, the vehicle standing on them"))], Limit);
            yield break;
        }

        var high = FourWheelMatch.HighSpeed(same ? 1 : rolls.Front!, same ? 1 : rolls.Rear!, frontRatio.Value, rearRatio.Value);
        yield return Judge(joint, box.FrontDrive, Spoken("at speed"), high, limits => limits.High, frontRatio.Value, rearRatio.Value);
        if (same || (ahead.LoadedRadius is null || tyres.LoadedRadius is null)) yield break;

        var low = FourWheelMatch.LowSpeed(ahead.LoadedRadius.Value, tyres.LoadedRadius.Value, frontRatio.Value, rearRatio.Value);
        yield return Judge(joint, box.FrontDrive, Spoken("crawling"), low, limits => limits.Low, frontRatio.Value, rearRatio.Value);
    }

    private Finding Judge(
        IReadOnlyList<Position> joint, FrontDrive? drive, string when, Measured mismatch, Func<(double Low, double High), double> pick, Measured frontRatio, Measured rearRatio)
    {
        var limit = pick(FourWheelMatch.Limits(drive ?? FrontDrive.ThroughShaft));
        var wanted = new Window(-limit, limit);
        var judged = Verdicts.Judge(mismatch, wanted, drive is null || FourWheelMatch.LimitIsVerified(drive.Value));
        if (drive is null && judged.Verdict != Verdict.Fits)
        {
            return this.Open(
                joint, Spoken($"Whether rear wheels that go {Further(mismatch)} than the front ones {when} are allowed"),
                [new(Spoken("how the front axle is joined is not known"), Spoken("say whether the front axle is always joined, engaged by hand, or behind a centre differential"))], Limit);
        }

        // mismatch = 1 − q · i_front / i_rear: either axle may be the one that is changed.
        var share = 1 - mismatch;
        var matching = new Window(1 - limit, 1 + limit);
        return this.Judged(new(
            joint, mismatch, Units.PercentUnit, wanted,
            $"In a turn of the transfer case the rear wheels go {Further(mismatch)} than the front ones {when}; wanted -{Rounded.Exact(limit * 100)} to {Rounded.Exact(limit * 100)} %.",
            Limit)
        {
            ByLimits = judged,
            Windows =
            [
                PartWindow.Proportional(Position.FrontAxle, Spoken($"{Position.FrontAxle.InWords()} ratio"), Units.One, share / frontRatio, matching),
                PartWindow.Inverse(Position.RearAxle, Spoken($"{Position.RearAxle.InWords()} ratio"), Units.One, share * rearRatio, matching),
            ],
        });
    }

    // The mismatch is a share of the front wheels' way, so it is the rear ones that are told.
    private static string Further(Measured mismatch)
        => mismatch.Value < 0 ? Spoken($"{Said.Number(-mismatch, Units.PercentUnit, 1)} further") : Spoken($"{Said.Number(mismatch, Units.PercentUnit, 1)} less far");

    private static IEnumerable<Missing> Lacking(Axle front, Axle rear)
    {
        if (front.Ratio is null) yield return new(Spoken("the front axle ratio is not known"), Spoken("count the front axle's turns: ten wheel turns, one wheel held, hubs engaged"));
        if (rear.Ratio is null) yield return new(Spoken("the axle ratio is not known"), Spoken("count the axle's turns: ten wheel turns, one wheel held"));
    }
}
