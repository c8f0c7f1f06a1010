using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Checks;

/// <summary>The lowest gear and range is as low as the owner wants.</summary>
/// <remarks>
/// Limit: the owner's goal; the trade asks for 40 with a clutch and 30 with a converter off the road, 60 to 100 on rock. Formula: <see cref="LowRange"/>; where idle and
/// tyre are known the crawl is told beside it.
/// Says nothing without such a goal.
/// </remarks>
internal sealed class OverallLowCheck : ICheck
{
    public string Id => "overall-low";

    public string Title => Spoken("Overall low ratio");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (goals.OverallLow is not { } goal) yield break;

        Position[] between = [Position.Transmission, .. driveline.TransferCase is null ? Array.Empty<Position>() : [Position.TransferCase], driveline.DrivingPosition];
        yield return LowRange.OverallRatio(driveline) is { } overall
            ? this.Judged(new(
                between, overall, Units.One, goal.Wanted,
                $"In gear {LowRange.LowestStep(driveline)!.Name} the engine turns {Said.Number(overall, Units.One)} times a wheel turn; wanted {goal.Wanted.InWords(Units.One)}.{Crawl(driveline)}",
                Finding.OwnersGoal)
            {
                Windows = Windows(driveline, overall, goal.Wanted),
            })
            : this.Open(
                between, Spoken("The overall low ratio"), [.. Missing.Gears(driveline), .. Missing.LowRange(driveline), .. Missing.Axle(driveline)],
                Units.One, goal.Wanted, Finding.OwnersGoal);
    }

    private static Sentence Crawl(Driveline driveline)
        => LowRange.CrawlSpeed(driveline) is { } crawl ? Said.As($" At idle it crawls at {Said.Number(crawl, Units.KilometrePerHour, 1)}.") : "";

    private static PartWindow[] Windows(Driveline driveline, Measured overall, Window wanted)
    {
        PartWindow For(Position position, string what, Measured ratio) => PartWindow.Proportional(position, what, Units.One, overall / ratio, wanted);

        var axle = driveline.DrivingPosition;
        return
        [
            .. driveline.TransferCase?.Low is { } low ? [For(Position.TransferCase, Spoken("transfer case low"), low.Value)] : Array.Empty<PartWindow>(),
            For(axle, Spoken($"{axle.InWords()} ratio"), driveline.DrivingAxle!.Ratio!.Value),
            For(Position.Transmission, Spoken("first gear"), driveline.Transmission!.First!.Ratio.Value),
        ];
    }
}
