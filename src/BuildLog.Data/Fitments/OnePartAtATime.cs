using BuildLog.Data.Components;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>A position holds one component at a time.</summary>
internal static class OnePartAtATime
{
    /// <summary>What has to make room; null if the place is free from then on.</summary>
    /// <exception cref="RefusedException">The place is taken by something that came later; the sentence names it.</exception>
    public static Fitment? Occupant(IReadOnlyList<Fitment> ofVehicle, Component component, Vehicle vehicle, Position position, Moment moment)
    {
        Fitment? occupant = null;
        foreach (var other in ofVehicle.Where(fitment => fitment.Position == position).OrderBy(fitment => fitment.Start))
        {
            if (other.End <= moment) continue;

            var place = Spoken($"the {position.InWords()} of {vehicle}");
            if (other.Start > moment)
                throw Refused(Spoken($"The {other.Component} is {place} from {other.FromDay.InWords}; fit the {component} on that day or later."));
            if (other.ToDay is { } to)
                throw Refused(Spoken($"The {other.Component} was {place} from {other.FromDay.InWords} to {to.InWords}; fit the {component} on {to.InWords} or later."));

            occupant = other;
        }

        return occupant;
    }

    private static RefusedException Refused(string sentence) => new("place-taken", sentence, "");
}
