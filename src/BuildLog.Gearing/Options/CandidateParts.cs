using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Options;

/// <summary>Everything that a search combines; the part in place is one of each list unless it is not to stay.</summary>
public sealed record CandidateParts(
    IReadOnlyList<Candidate<Transmission>> Gearboxes,
    IReadOnlyList<Candidate<Overdrive>> Overdrives,
    IReadOnlyList<Candidate<Axle>> Axles,
    IReadOnlyList<Candidate<TyreSet>> Tyres)
{
    /// <summary>Only what is in place.</summary>
    /// <exception cref="RefusedException">Gearbox, axle or tyres are not fitted.</exception>
    public static CandidateParts InPlace(Driveline driveline)
    {
        var axle = driveline.DrivingAxle ?? throw Lacking(Spoken("axle"));
        var gearbox = driveline.Transmission ?? throw Lacking(Spoken("gearbox"));
        var tyres = driveline.Tyres ?? throw Lacking(Spoken("set of tyres"));
        return new(
            [Here(gearbox.Name, gearbox)], [Here(driveline.Overdrive?.Name ?? Spoken("no overdrive"), driveline.Overdrive)], [Here(axle.Name, axle)], [Here(tyres.Name, tyres)]);
    }

    /// <summary>How many combinations there are.</summary>
    public long Count => (long)Gearboxes.Count * Overdrives.Count * Axles.Count * Tyres.Count;

    /// <summary>In which prices are compared: the commonest, the first named of two that are as common; costs in others are not added to it.</summary>
    public string? Currency { get => field ?? Commonest; init; }

    /// <summary>The same parts, compared in this currency where any price names it.</summary>
    public CandidateParts In(string currency) => Prices.Any(price => price.Currency == currency) ? this with { Currency = currency } : this;

    private string? Commonest => Prices.GroupBy(price => price.Currency).MaxBy(named => named.Count())?.Key;

    private IEnumerable<Price> Prices
        => Gearboxes.Select(part => part.Price).Concat(Overdrives.Select(part => part.Price)).Concat(Axles.Select(part => part.Price)).Concat(Tyres.Select(part => part.Price))
            .OfType<Price>();

    private static Candidate<T> Here<T>(string name, T? part)
        where T : class
        => new(name, part, Pool.Owned) { IsInPlace = true };

    private static RefusedException Lacking(string what)
        => new("nothing-fitted", Spoken($"No {what} is fitted, so there is nothing to search around."), $"fit the {what} first");
}
