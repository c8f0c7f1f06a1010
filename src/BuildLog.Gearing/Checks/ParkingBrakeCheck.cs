using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Checks;

/// <summary>Somewhere in the driveline there is a parking brake: at an axle, or behind the gearbox.</summary>
/// <remarks>
/// One anywhere fits. Where every part that can have one was looked at and has none, it clashes; while one was not looked at it is open. Says nothing until
/// somebody has looked at one of them.
/// <para>Limit: without one a vehicle rolls away: physics, and every road law asks for one.</para>
/// </remarks>
internal sealed class ParkingBrakeCheck : ICheck, ILookedAt
{
    private static string Limit => Spoken("every road law asks for one");

    public string Id => "parking-brake";

    public string Title => Spoken("Parking brake");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        var places = Places(driveline).ToList();
        if (places.All(place => place.Brake is null)) yield break;

        Position[] all = [.. places.Select(place => place.Part)];
        if (places.Find(place => place.Brake == Presence.Fitted) is { Brake: not null } found)
        {
            yield return this.Plain([found.Part], Verdict.Fits, Because.Inside, $"The {found.Part.InWords()} has a parking brake.", Limit);
        }
        else if (places.Where(place => place.Brake is null).ToList() is { Count: > 0 } unlooked)
        {
            yield return this.Open(
                all, Spoken("Whether there is a parking brake"),
                [.. unlooked.Select(place => new Missing(Spoken($"nobody has looked at the {place.Part.InWords()}"), LookFor(place.Part)))], Limit);
        }
        else
        {
            yield return this.Plain(
                all, Verdict.Clash, Because.Outside, Spoken("There is no parking brake in the driveline."), Limit,
                Spoken("an axle with its parking brake and cables"), Spoken("a brake drum or disc behind the gearbox, with its lever"));
        }
    }

    IEnumerable<Unlooked> ILookedAt.NotLookedAt(Driveline driveline)
    {
        var places = Places(driveline).ToList();
        return places.All(place => place.Brake is null) ? places.Take(1).Select(place => new Unlooked(place.Part, Spoken("parking brake"), LookFor(place.Part))) : [];
    }

    private static string LookFor(Position part) => Spoken($"look at the {part.InWords()} for a lever, a cable or a drum");

    private static IEnumerable<(Position Part, Presence? Brake)> Places(Driveline driveline)
    {
        if (driveline.RearAxle is { } rear) yield return (Position.RearAxle, rear.ParkingBrake);
        if (driveline.FrontAxle is { } front) yield return (Position.FrontAxle, front.ParkingBrake);
        if (driveline.TransferCase is { } transfer) yield return (Position.TransferCase, transfer.ParkingBrake);
        if (driveline.Transmission is { } box) yield return (Position.Transmission, box.ParkingBrake);
    }
}
