using BuildLog.Data.Costs;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Data.Hunting;

/// <summary>Whether an offered part would do, as far as its claim says, and what it tells of what the part must have.</summary>
/// <param name="Verdict">The worst of its windows; open where the claim does not say.</param>
/// <param name="Windows">What the claim says to each window.</param>
/// <param name="IsTooDear">It costs more than the part may, in the same currency.</param>
public sealed record OfferJudgement(Verdict Verdict, IReadOnlyList<WindowJudgement> Windows, bool IsTooDear)
{
    /// <summary>What is told of each thing that it must have.</summary>
    public IReadOnlyList<MustHaveJudgement> MustHaves { get; private init; } = [];

    /// <summary>It is not what is hunted: outside a window of the hunt, or without something that it must have.</summary>
    public bool IsOutsideTheHunt => Verdict == Verdict.Clash || MustHaves.Any(must => must.Verdict == Verdict.Clash);

    public static OfferJudgement Of(Offer offer) => Of(offer.Wanted, offer.Claimed, offer.Price, $"{offer.What}\n{offer.Notes}");

    /// <summary>The same of an offer that is only being typed.</summary>
    public static OfferJudgement Of(WantedPart wanted, string claimed, Money? asked, string told = "")
    {
        var windows = wanted.Windows.Select(window => WindowJudgement.Of(window, claimed)).ToList();
        var isTooDear = asked is { } price && wanted.Most is { } most && price.Currency == most.Currency && price.Minor > most.Minor;
        return new(windows.Count == 0 ? Verdict.Open : windows.Min(window => window.Verdict), windows, isTooDear) { MustHaves = [.. wanted.MustHaves.Select(must => MustHaveJudgement.Of(must, told))] };
    }
}

/// <summary>What a claim says to one window: the claimed value, null where it says nothing.</summary>
public sealed record WindowJudgement(WantedWindow Window, Measured? Claimed, Verdict Verdict)
{
    internal static WindowJudgement Of(WantedWindow window, string claimed)
    {
        var value = Value(window.Quantity, Claim.Read(claimed).Decides);
        return new(window, value, value is null ? Verdict.Open : Verdicts.Judge(value, window.Read()).Verdict);
    }

    // What is claimed is as sure as its last digit; of tyres mostly the size is claimed, of a gearbox its gears.
    private static Measured? Value(WindowOf quantity, string claimed)
    {
        if (quantity == WindowOf.TopGearRatio) return ToldGears.Read(claimed).Understood(out var gears) ? gears.Top?.Ratio : null;
        if (quantity.Range() is { } range) return Understood(QuotedRatio.ReadMeasured(claimed, range, quantity.InWords()));
        if (QuantityText.Read(claimed, Kind.Length).Understood(out var length)) return length.ToItsLastDigit(quantity.InWords());
        if (!TyreSizeText.Read(claimed).Understood(out var size)) return null;

        return quantity switch
        {
            WindowOf.Circumference => size.RollingCircumference,
            WindowOf.TyreDiameter => size.FreeCircumferenceAsLabelled * (1 / Math.PI),
            WindowOf.Width => size.SectionWidth,
            _ => null,
        };
    }

    private static Measured? Understood(Parsed<Measured> read) => read.Understood(out var value) ? value : null;
}
