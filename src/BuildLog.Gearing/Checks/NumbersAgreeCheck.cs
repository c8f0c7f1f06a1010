using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Engines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;

namespace BuildLog.Gearing.Checks;

/// <summary>What is typed in one place does not contradict what is typed in another.</summary>
/// <remarks>
/// <code>lowest clean pull, torque points, cruise ≤ redline;   lowest clean pull ≤ last torque point;   share on driven wheels = that of the axle masses ± 5 %;
/// whole = both axles of one weighing, see <see cref="Weighing"/>;   half of both axles laden ≤ whole as driven ≤ both axles laden + 5 %;   torque points ≤ told peak, and reach it at its engine speed;   0.85 · half the diameter ≤ loaded radius ≤ half the diameter</code>
/// <para>
/// Each is a question: one of the two was mistyped, and both stay as they are. The 5 % are for another load on another day, and the half for a payload as
/// heavy as the vehicle: common practice, no source. Says nothing where all agree.
/// Source: definition.
/// </para>
/// </remarks>
internal sealed class NumbersAgreeCheck : ICheck
{
    private const double OtherLoad = 0.05;

    // A light truck carries as much again as it weighs. Common practice, no source.
    private const double LeastOfLaden = 0.5;

    // Softer, a tyre rolls on its rim. Common practice, no source.
    private const double FlattestTyre = 0.85;


    // What one rounds to that reads a curve off a page.
    private const double Rounding = 1.005;

    public string Id => "numbers-agree";

    public string Title => Spoken("Numbers that contradict");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
        => [.. Pull(driveline.Engine), .. Torque(driveline.Engine), .. Cruise(driveline.Engine, goals), .. Share(driveline), .. Whole(driveline), .. Peaks(driveline.Engine), .. Radius(driveline.Tyres), .. Radius(driveline.Tyres?.FrontPair)];

    private IEnumerable<Finding> Pull(Engine? engine)
    {
        if (engine?.LowestPull?.Value.Value is not { } pull) yield break;

        if (engine.Redline?.Value.Value is { } redline && pull >= redline)
            yield return Ask(Position.Engine, $"The lowest clean pull, {Rpm(pull)}, is not below the redline, {Rpm(redline)}.", Spoken("read lowest clean pull and redline again: were they changed round?"));
        else if (engine.Torque is { } torque && pull > torque.To)
            yield return Ask(Position.Engine, $"The lowest clean pull, {Rpm(pull)}, is above the last point of the torque curve, {Rpm(torque.To)}.", Spoken("read the lowest clean pull again, or enter the torque up to the redline"));
    }

    // A curve drawn through two peaks goes on past them by itself: the peaks are what was typed.
    private IEnumerable<Finding> Torque(Engine? engine)
    {
        if (engine is not { Torque: { } torque, Redline.Value.Value: { } redline }) yield break;

        var fastest = torque.Source == Source.Assumed ? Math.Max(torque.StrongestPoint.EngineSpeed, torque.MostPowerful.EngineSpeed) : torque.To;
        if (fastest > redline * Rounding)
            yield return Ask(Position.Engine, $"The torque is given at {Rpm(fastest)}, beyond the redline of {Rpm(redline)}.", Spoken("read the redline again, and the engine speeds of the torque"));
    }

    private IEnumerable<Finding> Cruise(Engine? engine, OwnersGoals goals)
        => engine?.Redline?.Value.Value is { } redline
            ? goals.Cruise.Where(goal => goal.Wanted.Low > redline).Select(goal => Ask(
                Position.Engine, $"At {goal.Speed.InWords} {Said.AtLeast(goal.Wanted.Low, Units.RevolutionPerMinute)} or more are wanted, beyond the redline of {Rpm(redline)}.", Spoken("read the redline and the cruise goal's engine speed again")))
            : [];

    private IEnumerable<Finding> Share(Driveline driveline)
    {
        if (driveline.Load?.DrivenShare?.Value is not { } told || DrivenWheels.Weighed(driveline) is not { } weighed || DrivenWheels.IsOfAllWheels(driveline, told)) yield break;

        var apart = told - weighed;
        if (Math.Abs(apart.Value) <= OtherLoad + apart.Expanded95) yield break;

        var axle = driveline.DrivingPosition;
        yield return Ask(
            axle, $"{Said.Number(told, Units.PercentUnit, 1)} of the mass are said to stand on driven wheels, and the axle masses put {Said.Number(weighed, Units.PercentUnit, 1)} on the {axle.InWords()}.",
            Spoken("weigh the axles one by one, or leave the share empty: the axle masses tell it"));
    }

    private IEnumerable<Finding> Whole(Driveline driveline)
    {
        if (driveline.AxleMasses?.Weighed is { Agrees: false, Whole: { } whole, Sum: { } both })
        {
            yield return Ask(
                [], $"Weighed in one the vehicle is {Said.Number(whole.Value, Units.Kilogram, 0)}, both axles together {Said.Number(both.Value, Units.Kilogram, 0)}; the masses are taken as no surer than that.",
                Weighing.Again);
        }
        else if (driveline is { Load.Mass.Value: { } driven, AxleMasses: { Front.Value: { } front, Rear.Value: { } rear } } && IsOtherThan(driven, front + rear))
        {
            yield return Ask(
                [], $"As it is driven the vehicle's mass is {Said.Number(driven.Value, Units.Kilogram, 0)}, both axles laden carry {Said.Number((front + rear).Value, Units.Kilogram, 0)} together: more than another load on another day explains.",
                Spoken("weigh the axles one by one and the whole on one day, and look which of the masses was mistyped"));
        }
    }

    // The axles are laden as heavily as they will be, so the whole may be a payload lighter, but hardly heavier.
    private static bool IsOtherThan(Measured driven, Measured laden)
    {
        var (over, under) = (driven - (laden * (1 + OtherLoad)), (laden * LeastOfLaden) - driven);
        return over.Value > over.Expanded95 || under.Value > under.Expanded95;
    }

    private IEnumerable<Finding> Peaks(Engine? engine)
    {
        if (engine is not { Torque: { } torque }) return [];

        return
        [
            .. Peak(torque, engine.ToldTorque, Spoken("peak torque"), Units.NewtonMetre, torque.PeakTorque, torque.At),
            .. Peak(torque, engine.ToldPower, Spoken("peak power"), Units.Kilowatt, torque.PeakPower, torque.PowerAt),
        ];
    }

    // Points need not reach the peak that is told; they may not pass it, nor stay below it at its own engine speed.
    private IEnumerable<Finding> Peak(TorqueCurve torque, ToldPeak? told, string what, Unit unit, Measured most, Func<Measured, Measured?> at)
    {
        var again = Spoken("read the torque points and the data sheet's peaks again: are they of one engine, and at the flywheel?");
        if (told is null) yield break;

        if (most.Value - told.Most > most.Expanded95)
            yield return Ask(Position.Engine, $"The torque points make {Said.Number(most, unit, 0)}, more than the {what} of {Said.Number(told.Most, unit, 0)} that is told.", again);
        else if (told.At is { } n && torque.Reaches(n) && at(n) is { } there && told.Most - there.Value > there.Expanded95)
            yield return Ask(Position.Engine, $"At {Rpm(n)} the torque points make {Said.Number(there, unit, 0)}, less than the {what} of {Said.Number(told.Most, unit, 0)} that is told for there.", again);
    }

    // A load presses the hub nearer to the ground, never away from it.
    private IEnumerable<Finding> Radius(TyreSet? tyres)
    {
        if (tyres is not { LoadedRadius.Value: { } loaded, Size: { } size }) yield break;

        var free = size.FreeCircumferenceAsLabelled * (0.5 / Math.PI);
        var (over, again) = (loaded - free, Spoken("measure from the hub's middle to the ground again, and read the tyre's size again"));
        if (over.Value > over.Expanded95)
            yield return Ask(
                Position.Tyres, $"The loaded radius of {Said.Number(loaded, Units.Millimetre, 0)} is larger than half the diameter of the {size.Designation}, {Said.Number(free, Units.Millimetre, 0)}; it is usually 0.95 to 0.98 of that.",
                again);
        else if (loaded.Interval95.High < free.Value * FlattestTyre)
            yield return Ask(Position.Tyres, $"The loaded radius of {Said.Number(loaded, Units.Millimetre, 0)} is far below half the diameter of the {size.Designation}, {Said.Number(free, Units.Millimetre, 0)}; it is usually 0.95 to 0.98 of that.", again);
    }

    private static SaidNumber Rpm(double value) => Said.Number(value, Units.RevolutionPerMinute, 0);

    private Finding Ask(Position at, Sentence says, Sentence cure) => Ask([at], says, cure);

    private Finding Ask(IReadOnlyList<Position> at, Sentence says, Sentence cure) => this.Plain(at, Verdict.Watch, Because.UnverifiedLimit, says, Spoken("definition"), cure);
}
