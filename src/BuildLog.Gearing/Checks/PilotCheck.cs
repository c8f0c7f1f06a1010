using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The gearbox's spigot runs in the crankshaft's pilot bearing.</summary>
/// <remarks>
/// <code>0 ≤ bore − spigot ≤ 0.15 mm</code>
/// <para>
/// A spigot larger than the bore does not go in: geometry, and a clash. One that is looser than 0.15 mm lets the input shaft wander: common practice from
/// memory, so a watch. Says nothing until one of the two was measured.
/// </para>
/// </remarks>
internal sealed class PilotCheck : ICheck, ILookedAt
{
    private static string What => Spoken("Whether the spigot runs in the pilot bearing");
    private static string Geometry => Spoken("geometry");
    private static string MeasureBore => Spoken("measure the pilot bearing's bore with a caliper");
    private static string MeasureSpigot => Spoken("measure the input shaft's spigot with a caliper");
    internal const double Loose = 0.15e-3;

    // Half a hundredth: two calipers that both show 15.00 mm.
    private const double Same = 0.005e-3;

    public string Id => "pilot";

    public string Title => Spoken("Pilot bearing");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline is not { Engine: { } engine, Transmission: { } box }) yield break;

        Position[] joint = [Position.Engine, Position.Transmission];
        switch (engine.Rear.PilotBore, box.Front.Spigot)
        {
            case ({ } bore, { } spigot):
                yield return Judge(joint, bore.Value, spigot.Value);
                break;
            case (null, not null):
                yield return this.Open(joint, What, [new(Spoken("the pilot's bore is not known"), MeasureBore)], Geometry);
                break;
            case (not null, null):
                yield return this.Open(joint, What, [new(Spoken("the spigot is not known"), MeasureSpigot)], Geometry);
                break;
        }
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline is { Engine.Rear.PilotBore: null, Transmission.Front.Spigot: null } ? [new(Position.Engine, Spoken("pilot bore"), MeasureBore), new(Position.Transmission, Spoken("spigot"), MeasureSpigot)] : [];

    private Finding Judge(IReadOnlyList<Position> joint, Measured bore, Measured spigot)
    {
        var play = bore - spigot;
        var limits = new TwoLimits(new(-Same, Loose), Window.AtLeast(-Same));
        var tight = play.Value < 0;
        return this.Judged(new(
            joint, play, Units.Millimetre, limits.Good,
            $"The pilot's bore is {Said.Number(bore, Units.Millimetre, 2)}, the gearbox's spigot {Said.Number(spigot, Units.Millimetre, 2)}.",
            tight ? Geometry : Spoken("common practice for the play of a pilot bush"))
        {
            ByLimits = limits.Judge(play),
            Reaches = limits.Straddled(play),
            Cures = [$"a pilot {(tight ? Spoken("bearing") : Spoken("bush"))} with a bore of {Said.Fitting(spigot, limits.Good, Units.Millimetre, 2)}{(tight ? "" : Spoken(" and a running fit"))}"],
        });
    }
}
