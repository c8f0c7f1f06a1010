using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Plans;

namespace BuildLog.Tui.Hunting;

/// <summary>An offered axle of a four-wheel drive with what is offered for its other end: neither does without the other.</summary>
/// <param name="Other">What is offered for the other end.</param>
/// <param name="Together">What both come to.</param>
internal sealed record OfferedPair(Offer Other, OfferJudged Together)
{
    /// <param name="bench">The vehicle.</param>
    /// <param name="wanted">The axle that is hunted.</param>
    /// <param name="offer">What is offered for it.</param>
    /// <param name="others">What else is on offer.</param>
    /// <returns>The best of those that match; null where none does.</returns>
    public static OfferedPair? Of(VehicleOnBench bench, WantedPart wanted, PlannedOffer offer, IEnumerable<Offer> others)
    {
        var driveline = bench.Driveline;
        var isDriving = HuntedPlace.Of(driveline, wanted) == driveline.DrivingPosition;
        var otherEnd = isDriving ? driveline.OtherPosition : driveline.DrivingPosition;
        if (Axle(offer, isDriving ? driveline.DrivingAxle : driveline.OtherAxle) is not { } here) return null;

        OfferedPair? Beside(Offer other)
        {
            if (Axle(new(other.What, Claim.Read(other.Claimed)), isDriving ? driveline.OtherAxle : driveline.DrivingAxle) is not { } there) return null;

            return Offers.JudgePair(driveline, bench.Goals, isDriving ? here : there, isDriving ? there : here) is { } both ? new(other, both) : null;
        }

        return others.Where(other => other.Wanted.VehicleId == wanted.VehicleId && other.Wanted.Kind == WantedKind.Axle && HuntedPlace.Of(driveline, other.Wanted) == otherEnd)
            .Select(Beside).OfType<OfferedPair>().MaxBy(pair => pair.Together.Verdict);
    }

    private static Candidate<Axle>? Axle(PlannedOffer offer, Axle? fitted)
        => ToldPart.Axle(offer.Claim, offer.What, fitted).Understood(out var axle) ? new(offer.What, axle, Pool.Offered) : null;
}
