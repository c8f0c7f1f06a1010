using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The axle's spring perches stand as far apart as the chassis hangs its springs.</summary>
/// <remarks>
/// <code>|perches − springs| ≤ 2 mm fits;   beyond 6 mm the springs would be pulled sideways</code>
/// <para>
/// Middle to middle. Both are known by geometry alone; the two allowances are what bushes and centre bolts take, our own choice. Says nothing until one of
/// the two was measured: many an axle has no perches at all.
/// </para>
/// </remarks>
internal sealed class PerchesCheck : ICheck
{
    private const double Takes = 2e-3;
    private const double Most = 6e-3;
    private static string Limit => Spoken("geometry, with what bushes and centre bolts take");

    private static readonly TwoLimits Limits = new(new(-Takes, Takes), new(-Most, Most));

    public string Id => "perches";

    public string Title => Spoken("Axle perches");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => HungAxle.Of(driveline).Where(hung => (hung.Axle.Perches ?? hung.Hanging.Springs) is not null).Select(Judge);

    private Finding Judge(HungAxle hung)
    {
        var axle = hung.Position.InWords();
        if (hung.Axle.Perches?.Value is not { } perches || hung.Hanging.Springs?.Value is not { } springs)
        {
            return this.Open([hung.Position], Spoken($"Whether the {axle}'s perches meet the springs"), [hung.Axle.Perches is null
                ? new(Spoken($"the {axle}'s perches were not measured"), Spoken("measure the perches apart, centre hole to centre hole"))
                : new(Spoken("the chassis's springs were not measured"), Spoken("measure the springs apart, middle to middle, and enter it with the vehicle"))], Units.Millimetre, Limits.Good, Limit);
        }

        var apart = perches - springs;
        return this.Judged(new(
            [hung.Position], apart, Units.Millimetre, Limits.Good,
            $"The {axle}'s perches are {Said.Number(perches, Units.Millimetre, 0)} apart, the springs {Said.Number(springs, Units.Millimetre, 0)}.", Limit)
        {
            ByLimits = Limits.Judge(apart),
            Reaches = Limits.Straddled(apart),
            Cures = [$"perches welded on {Said.Fitting(springs, Limits.Good, Units.Millimetre, 0)} apart"],
        });
    }
}
