using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>The gearbox may take the engine's torque.</summary>
/// <remarks>
/// <code>T_peak ≤ rating at the input</code>
/// <para>
/// Peak net torque; a converter's multiplication comes behind the input that is rated. Limit: the maker's rating; one that is only somebody's word warns and
/// never clashes. Without a rating nothing is judged, and <see cref="NotLookedAtCheck"/> names it.
/// </para>
/// </remarks>
internal sealed class GearboxTorqueCheck : ICheck, ILookedAt
{
    public string Id => "gearbox-torque";

    public string Title => Spoken("Gearbox input torque");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline is not { Engine: { } engine, Transmission.TorqueRating: { } rating }) yield break;

        Position[] between = [Position.Engine, Position.Transmission];
        var wanted = Window.AtMost(rating.Value.Value);
        var source = Spoken($"gearbox's torque rating, {rating.Source.InWords()}");
        if (engine.PeakTorque is not { } torque)
        {
            yield return this.Open(between, Spoken("Whether the gearbox holds"), Missing.PeakTorque(driveline), Units.NewtonMetre, wanted, source);
            yield break;
        }

        var unit = Units.NewtonMetre;
        yield return this.Judged(new(
            between, torque - (rating.Value - rating.Value.Value), unit, wanted,
            $"The engine gives {Said.Number(torque, unit, 0)}, the gearbox is rated for {Said.Number(rating.Value, unit, 0)}{Behind(driveline.Transmission)}.", source)
        {
            LimitIsVerified = rating.Source < Source.OwnersWord,
            Cures = [$"a gearbox rated for {Said.RatedFor(torque)} or more"],
        });
    }

    // Some makers rate the shaft behind the converter, which turns with more than the engine gives.
    private static string Behind(Transmission box) => box.Converter is null ? "" : Spoken(", taken as the engine's torque in front of the converter");

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
        => driveline is { Engine.PeakTorque: not null, Transmission.TorqueRating: null } ? [Unlooked.Rating(Position.Transmission, Spoken("torque rating"))] : [];
}
