using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>A component is in one place at a time.</summary>
internal static class OnePlaceAtATime
{
    /// <exception cref="RefusedException">It is elsewhere then or later; the sentence names the other fitment.</exception>
    public static void Check(IReadOnlyList<Fitment> ofComponent, Component component, Vehicle vehicle, Position position, Moment moment)
    {
        foreach (var other in ofComponent.OrderBy(fitment => fitment.Start))
        {
            if (other.End <= moment) continue;

            var there = Spoken($"{other.Vehicle} as {other.Position.InWords()}");
            var since = other.FromDay.InWords;
            if (other.Start > moment)
                throw Refused(Spoken($"The {component} is fitted to {there} from {since}, so it cannot be fitted to {vehicle} from {moment.Day.InWords()} on; begin after it came off there."));
            if (other.ToDay is { } to)
                throw Refused(Spoken($"The {component} was fitted to {there} from {since} to {to.InWords}; fit it to {vehicle} on {to.InWords} or later."));

            throw Refused(other.VehicleId == vehicle.Id && other.Position == position
                ? Spoken($"The {component} is fitted to {there} already, since {since}.")
                : Spoken($"The {component} is fitted to {there} since {since}; take it off there first."));
        }
    }

    private static RefusedException Refused(string sentence) => new("fitted-elsewhere", sentence, "");
}
