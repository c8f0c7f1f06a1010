using BuildLog.Data.Sessions;
using BuildLog.Data.Specs;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Data.Drivelines;

/// <summary>What a vehicle weighs, how hard it is to move, and where it hangs its axles.</summary>
/// <remarks>Read once for each vehicle, so that two of its drivelines share these errors.</remarks>
internal sealed class VehicleNumbers
{
    private readonly VehicleLoad? load;
    private readonly AxleMasses? axles;
    private readonly Hanging frontHanging;
    private readonly Hanging rearHanging;
    private readonly IReadOnlyList<SpeedometerRunSession> runs;

    /// <param name="vehicle">The vehicle.</param>
    /// <param name="sessions">What was measured of the vehicle itself, the latest first.</param>
    public VehicleNumbers(Vehicle vehicle, IReadOnlyList<Session> sessions)
    {
        runs = [.. sessions.OfType<SpeedometerRunSession>()];
        All = [.. SpecNumbers.Of(vehicle.Specs, sessions)];
        All = [.. All, .. OfClass(Spec.DragArea, BodyClass.All.FirstOrDefault(body => body.Name == vehicle.BodyClass)?.DragArea()),
            .. OfClass(Spec.RollingResistance, RollingClass.All.FirstOrDefault(tyre => tyre.Name == vehicle.RollingClass)?.Coefficient())];
        (frontHanging, rearHanging) = (new(Find(Spec.FrontSprings), Find(Spec.FrontPad)), new(Find(Spec.RearSprings), Find(Spec.RearPad)));
        var (front, rear) = (Find(Spec.FrontAxleMass), Find(Spec.RearAxleMass));
        if (front is not null || rear is not null) axles = new(front, rear) { Weighed = sessions.OfType<WeighbridgeSession>().FirstOrDefault()?.Result() };
        if (All.Count == 0) return;

        load = new()
        {
            Mass = Find(Spec.Mass),
            DragArea = Find(Spec.DragArea),
            RollingResistance = Find(Spec.RollingResistance),
            DrivenShare = Find(Spec.DrivenShare),
            GravityHeight = Find(Spec.GravityHeight),
            Wheelbase = Find(Spec.Wheelbase),
            Altitude = vehicle.Altitude?.Si ?? 0,
        };
    }

    /// <summary>Every number noted of the vehicle itself, and what its classes say where none is.</summary>
    public IReadOnlyList<NumberKnown> All { get; }

    /// <summary>The driveline with what it has to move.</summary>
    public Driveline Moved(Driveline chain)
        => chain with
        {
            AxleMasses = axles,
            FrontHanging = frontHanging,
            RearHanging = rearHanging,
            Load = load,
        };

    /// <summary>The driveline with the last measured distance that was driven with it.</summary>
    /// <param name="chain">The driveline.</param>
    /// <param name="since">Since when nothing of it that turns the speedometer was changed.</param>
    /// <param name="until">The day it is looked at.</param>
    public Driveline Driven(Driveline chain, DateOnly since, DateOnly until)
        => runs.FirstOrDefault(run => run.Day.LiesWithin(since, until)) is { } run ? chain with { Driven = new(run.Share, chain) } : chain;

    private IEnumerable<NumberKnown> OfClass(Spec spec, Known? usual)
        => usual is null || Find(spec) is not null ? [] : [new(null, spec.InWords(), spec.Line().Unit, usual, null, [])];

    private Known? Find(Spec spec) => All.FirstOrDefault(number => number.Number == spec.InWords())?.Used;
}
