using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The axle's spring perches stand as far apart as the chassis hangs its springs.</summary>
/// <remarks>
/// <code>|perches − springs| ≤ 2 mm</code>
/// <para>
/// Middle to middle. What bushes and centre bolts take is our own choice, so it warns and never clashes; perches can be cut off and welded on anew. Says
/// nothing until one of the two was measured: many an axle has no perches at all.
/// </para>
/// </remarks>
internal sealed class PerchesCheck : ICheck
{
    internal const double Takes = 2e-3;

    private static readonly Window Wanted = new(-Takes, Takes);

    private static string Limit => Spoken("what bushes and centre bolts take, our own choice");

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
                : new(Spoken("the chassis's springs were not measured"), Spoken("measure the springs apart, middle to middle, and enter it with the vehicle"))], Units.Millimetre, Wanted, Limit);
        }

        var apart = perches - springs;
        return this.Judged(new(
            [hung.Position], apart, Units.Millimetre, Wanted,
            $"The {axle}'s perches are {Said.Number(perches, Units.Millimetre, 0)} apart, the springs {Said.Number(springs, Units.Millimetre, 0)}.", Limit)
        {
            LimitIsVerified = false,
            Cures = [$"perches welded on {Said.Fitting(springs, Wanted, Units.Millimetre, 0)} apart"],
        });
    }
}
