using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Fitments;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Options;

/// <summary>What a search may combine for one vehicle: the parts in place, and from the pools whatever may change.</summary>
/// <param name="shop">The record.</param>
/// <param name="bench">The vehicle.</param>
/// <param name="wish">Where parts may come from, and which may change.</param>
/// <param name="day">Offers that have run out by then are left out.</param>
internal sealed class PartsToTry(Shop shop, VehicleOnBench bench, SearchWish wish, DateOnly day)
{
    // What was only counted in a yard is in the record for its count, what is gone for what it was: neither is there to fit.
    private readonly IReadOnlyList<PartPlace> owned = [.. (wish.AsksTheRecord ? shop.Parts() : []).Where(place => YardPart.IsAtHand(place.Component) && wish.Pools.Contains(PoolOf(place)))];
    private readonly IReadOnlyDictionary<long, Fitment> cameOff = wish.AsksTheRecord ? shop.LastOfLooseParts().ToDictionary(fitment => fitment.ComponentId) : new();
    private readonly OfferedParts offered = new(wish.Pools.Contains(Pool.Offered) ? shop.OffersOn(day) : [], bench.Driveline);
    private readonly Driveline driveline = bench.Driveline;
    private readonly IReadOnlySet<Position> changing = wish.On(bench.Driveline);

    /// <summary>Offers whose claim says too little to be searched.</summary>
    public IReadOnlyList<string> Unclear => offered.Unclear(changing);

    /// <exception cref="RefusedException">Nothing is fitted to search around, or nothing but what is fitted could be tried.</exception>
    public CandidateParts All()
    {
        var here = CandidateParts.InPlace(driveline);
        var parts = new CandidateParts(
            [.. here.Gearboxes, .. Owned<TransmissionComponent, Transmission>(Position.Transmission, tried => tried.Transmission), .. Offered(Position.Transmission, offered.Gearboxes), .. Listed(Position.Transmission, () => ListedParts.Gearboxes(driveline.Transmission!))],
            [.. here.Overdrives, .. Without(), .. Owned<OverdriveComponent, Overdrive>(Position.Overdrive, tried => tried.Overdrive), .. Offered(Position.Overdrive, offered.Overdrives), .. Listed(Position.Overdrive, ListedParts.Overdrives)],
            [.. here.Axles, .. Owned<AxleComponent, Axle>(driveline.DrivingPosition, tried => tried.DrivingAxle), .. Offered(driveline.DrivingPosition, offered.Axles), .. Listed(driveline.DrivingPosition, () => ListedParts.Axles(driveline.DrivingAxle!))],
            [.. here.Tyres, .. Owned<WheelSetComponent, TyreSet>(Position.Tyres, tried => tried.Tyres), .. Offered(Position.Tyres, offered.Tyres), .. Listed(Position.Tyres, () => ListedParts.Tyres(driveline.Tyres!, bench.Goals))]);
        return parts.Count > 1
            ? parts.In(shop.Workshop().Currency)
            : throw new RefusedException("empty-pool", Spoken($"There is nothing else to try on {bench.Vehicle.Name}: nothing that is {wish.PoolsInWords} would go in as {wish.ChangingInWords}. Search more than that."), "owned,listed");
    }

    private static Pool PoolOf(PartPlace place) => place.Fitment is null ? Pool.Owned : Pool.Elsewhere;

    private IEnumerable<Candidate<TPart>> Owned<TComponent, TPart>(Position position, Func<Driveline, TPart?> part)
        where TComponent : Component
        where TPart : class
    {
        if (!changing.Contains(position)) return [];

        var inPlace = bench.Fitted.At(position)?.Id;
        var places = owned.Where(place => place.Component is TComponent && place.Component.Id != inPlace).ToList();
        return shop.Trying(driveline, position, [.. places.Select(place => place.Component)])
            .Zip(places, (tried, place) => Owned(place, part(tried)));
    }

    private Candidate<TPart> Owned<TPart>(PartPlace place, TPart? part)
        where TPart : class
    {
        var doubts = PartDoubts.Of(place.Component, cameOff.GetValueOrDefault(place.Component.Id));
        return new(place.Component.Name, part, PoolOf(place)) { ComponentId = place.Component.Id, FittedTo = place.Fitment?.Vehicle.Name, Told = doubts.Told, IsDoubtful = doubts.IsDoubtful, Barred = Elsewhere(place) ?? Unsound(place.Component.Kind, doubts) };
    }

    private string? Unsound(Later kind, PartDoubts doubts) => doubts.IsDoubtful && !wish.TriesDoubtful ? Spoken($"{kind} to be inspected first") : null;

    // Where it is fitted, or was fitted last, counts before what it is called.
    private string? Elsewhere(PartPlace place) => place.Component is AxleComponent axle
        ? AxlePlace.Barred((place.Fitment ?? cameOff.GetValueOrDefault(axle.Id))?.Position ?? AxlePlace.Said(axle.Name), driveline.DrivingPosition)
        : null;

    private IEnumerable<Candidate<Overdrive>> Without()
        => changing.Contains(Position.Overdrive) && driveline.Overdrive is not null ? [new(Spoken("no overdrive"), null, Pool.Owned) { Typed = PlannedDriveline.None }] : [];

    private IEnumerable<Candidate<TPart>> Offered<TPart>(Position position, Func<IReadOnlyList<Candidate<TPart>>> list)
        where TPart : class
        => changing.Contains(position) ? list() : [];

    private IEnumerable<Candidate<TPart>> Listed<TPart>(Position position, Func<IReadOnlyList<Candidate<TPart>>> list)
        where TPart : class
        => wish.Pools.Contains(Pool.Listed) && changing.Contains(position) ? list() : [];
}
