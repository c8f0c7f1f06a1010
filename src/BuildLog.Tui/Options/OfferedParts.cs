using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Options;

/// <summary>What is on offer, as parts of a driveline as far as each claim says what it is.</summary>
internal sealed class OfferedParts(IReadOnlyList<Offer> offers, Driveline driveline)
{
    public IReadOnlyList<Candidate<Transmission>> Gearboxes() => Told(IsGearbox, Gearbox);

    public IReadOnlyList<Candidate<Overdrive>> Overdrives() => Told(IsOverdrive, Overdrive);

    public IReadOnlyList<Candidate<Axle>> Axles() => Told(IsAxle, Axle, offer => AxlePlace.Barred(AxlePlace.Said(offer.What) ?? AxlePlace.Said(offer.Wanted.Title), driveline.DrivingPosition));

    public IReadOnlyList<Candidate<TyreSet>> Tyres() => Told(AreTyres, Tyres);

    /// <summary>Offers of these positions whose claim says too little.</summary>
    public IReadOnlyList<string> Unclear(IReadOnlySet<Position> positions) =>
    [
        .. Silent(positions.Contains(Position.Transmission), IsGearbox, Gearbox), .. Silent(positions.Contains(Position.Overdrive), IsOverdrive, Overdrive),
        .. Silent(positions.Contains(driveline.DrivingPosition), IsAxle, Axle), .. Silent(positions.Contains(Position.Tyres), AreTyres, Tyres),
    ];

    private static bool IsGearbox(WantedKind kind) => kind == WantedKind.Transmission;

    private static bool IsOverdrive(WantedKind kind) => kind == WantedKind.Overdrive;

    private static bool IsAxle(WantedKind kind) => kind == WantedKind.Axle;

    private static bool AreTyres(WantedKind kind) => kind is WantedKind.Tyres or WantedKind.Wheels;

    private Parsed<Transmission> Gearbox(Offer offer) => ToldPart.Gearbox(Claim.Read(offer.Claimed), offer.What, driveline.Transmission);

    private Parsed<Overdrive> Overdrive(Offer offer) => ToldPart.Overdrive(Claim.Read(offer.Claimed), offer.What);

    private Parsed<Axle> Axle(Offer offer) => ToldPart.Axle(Claim.Read(offer.Claimed), offer.What, driveline.DrivingAxle);

    private Parsed<TyreSet> Tyres(Offer offer) => ToldPart.Tyres(Claim.Read(offer.Claimed), offer.What, driveline.Tyres);

    private IReadOnlyList<Candidate<T>> Told<T>(Func<WantedKind, bool> of, Func<Offer, Parsed<T>> read, Func<Offer, string?>? barred = null)
        where T : class
    {
        var candidates = new List<Candidate<T>>();
        foreach (var offer in offers.Where(offer => of(offer.Wanted.Kind)))
        {
            if (!read(offer).Understood(out var part)) continue;

            var claim = Claim.Read(offer.Claimed);
            var isOutside = OfferJudgement.Of(offer).IsOutsideTheHunt;
            candidates.Add(new(offer.What, part, Pool.Offered)
            {
                Price = offer.Price is { } price ? new(price.Minor, price.Currency) : null,
                Barred = barred?.Invoke(offer),
                Typed = new PlannedOffer(offer.What, claim).Text,
                IsWordAlone = claim.IsWordAlone,
                IsOutsideTheHunt = isOutside,
                Told = isOutside ? Spoken("outside what you hunt") : null,
            });
        }

        return candidates;
    }

    private IEnumerable<string> Silent<T>(bool asked, Func<WantedKind, bool> of, Func<Offer, Parsed<T>> read)
        where T : class
        => asked ? offers.Where(offer => of(offer.Wanted.Kind) && read(offer).Refusal is not null).Select(offer => offer.What) : [];
}
