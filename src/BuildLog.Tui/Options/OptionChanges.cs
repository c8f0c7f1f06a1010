using BuildLog.Data.Plans;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Options;

/// <summary>What a way out changes, as a plan keeps it: so the plan is judged as the same parts were.</summary>
internal static class OptionChanges
{
    /// <summary>The places that are changed. The other axle of a four-wheel drive is none by itself: it gets the same gears.</summary>
    public static IEnumerable<Position> Positions(Option option)
    {
        if (!option.Gearbox.IsInPlace) yield return Position.Transmission;
        if (!option.Overdrive.IsInPlace) yield return Position.Overdrive;
        if (!option.Axle.IsInPlace) yield return option.Driveline.DrivingPosition;
        if (!option.Tyres.IsInPlace) yield return Position.Tyres;
        if (option.Dial is not null) yield return Position.Speedometer;
    }

    /// <summary>A part of the shop by itself; anything else by what makes it.</summary>
    public static IReadOnlyList<PlannedChange> Of(Option option) => [.. Positions(option).Select(position => position switch
    {
        Position.Transmission => Change(position, option.Gearbox),
        Position.Overdrive => Change(position, option.Overdrive),
        Position.Tyres => Change(position, option.Tyres),
        Position.Speedometer => new(position, TriedSpeedometer.Typed(option.Dial!.Drive), null),
        _ => Change(position, option.Axle),
    })];

    private static PlannedChange Change<T>(Position position, Candidate<T> candidate)
        where T : class
        => new(position, candidate.Typed, candidate.ComponentId);
}
