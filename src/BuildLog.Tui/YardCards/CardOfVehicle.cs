using BuildLog.Data;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.YardCards;

/// <summary>What to take to the yard for one part of a vehicle: the windows of today, the must-haves of the part that is hunted, and our own measures to compare.</summary>
internal sealed record CardOfVehicle(VehicleOnBench Bench, CardPart Part, IReadOnlyList<MustHave> Musts)
{
    private static readonly IReadOnlyList<string> Cautions = ["Never under a car on a jack. Stands, chocks, key out; not alone."];

    public static CardOfVehicle Read(Shop shop, VehicleOnBench bench, CardPart part)
    {
        var hunted = shop.Wanted(bench.Vehicle).Where(wanted => wanted.State == WantedState.Hunting && wanted.Kind.OnCard() == part);
        return new(bench, part, [.. hunted.SelectMany(wanted => wanted.MustHaves)]);
    }

    /// <summary>What the part may be.</summary>
    /// <exception cref="RefusedException">Nothing wanted depends on it, or too little is known.</exception>
    public WindowOfPart Window
    {
        get
        {
            var position = Part switch
            {
                CardPart.Gearbox => Position.Transmission,
                CardPart.Overdrive => Position.Overdrive,
                CardPart.Tyres => Position.Tyres,
                _ => Bench.Driveline.DrivingPosition,
            };
            var windows = DrivelineWindows.Of(Bench.Driveline, Bench.Goals, Bench.Findings).Where(window => window.Position == position).ToList();

            // Of a gearbox the gear one cruises in comes before the lowest, of tyres what they cover before what they measure.
            return windows.FirstOrDefault(window => window.Quantity.StartsWith("ratio of", StringComparison.Ordinal) || window.Quantity.EndsWith("circumference", StringComparison.Ordinal))
                ?? windows.FirstOrDefault()
                ?? throw new RefusedException(
                    "window", $"Nothing wanted of {Bench.Vehicle.Name} depends on the {Part.InWords()} yet, or the other parts' numbers are not known: set a cruise goal and enter them.", "");
        }
    }

    public AxleCard Axle() => AxleCard.Of(Window, Bench.Driveline.DrivingAxle?.HubReduction?.Value.Value ?? 1);

    public GearboxCard Gearbox() => GearboxCard.Of(Window);

    public TyreCard Tyres() => TyreCard.Of(Window, Bench.Driveline.DrivingTyres);

    /// <exception cref="RefusedException">No such part can do; the sentence says why.</exception>
    public YardCard Content(CardPaper paper, DateTimeOffset printed)
    {
        var card = new YardCard
        {
            Id = Bench.Vehicle.Uid,
            Created = printed,
            Size = paper,
            PrintedOn = Forms.DayText.InWords(DateOnly.FromDateTime(printed.DateTime)),
            About = Bench.Vehicle.Name,
            Part = Part.InWords(),
            Wanted = [.. Wanted(Window)],
            Cautions = Cautions,
        };
        return Part switch
        {
            CardPart.Axle => Filled(card, "propshaft turns", AxleCardWords.Counts(Axle()), AxleCardWords.Notes(Axle()), AxleCardWords.Blanks(Bench.Driveline.DrivingAxle)),
            CardPart.Tyres => Filled(card, "metres", TyreCardWords.Counts(Tyres()), TyreCardWords.Notes(Tyres()), TyreCardWords.Blanks(Bench.Driveline.DrivingTyres)),
            _ => Filled(card, "input turns", GearboxCardWords.Counts(Gearbox()), GearboxCardWords.Notes(Gearbox()), GearboxCardWords.Blanks(Bench.Driveline.Transmission)),
        };
    }

    /// <summary>Why no count can be a sure yes.</summary>
    public static string NoSureYes(WindowOfPart wanted) => $"No count means a sure yes yet: {wanted.OpenedBy ?? "too little is known of the other parts"}.";

    private static IEnumerable<string> Wanted(WindowOfPart window)
    {
        yield return window.InWords();
        if (window.Lowest is { } lowest) yield return $"not lower: {lowest.InWords}";
        if (window.Highest is { } highest) yield return $"not higher: {highest.InWords}";
    }

    // What the hunted part must have stands at the line it is about, or on one of its own.
    private YardCard Filled(YardCard card, string counted, IReadOnlyList<CardCount> counts, IEnumerable<string> notes, IEnumerable<CardBlank> blanks)
    {
        var lines = blanks.ToList();
        foreach (var must in Musts)
        {
            var at = lines.FindIndex(line => line.What.Contains(must.What, StringComparison.OrdinalIgnoreCase));
            if (at < 0) lines.Add(new(must.What, "", $"must be {must.Text}"));
            else lines[at] = lines[at] with { Must = $"must be {must.Text}" };
        }

        return card with { Counted = counted, Counts = counts, Notes = [.. notes], Blanks = lines };
    }
}

/// <summary>What there is a card for.</summary>
internal enum CardPart
{
    Axle,
    Gearbox,
    Overdrive,
    Tyres,
}

internal static class CardPartWords
{
    public static string InWords(this CardPart part) => part switch
    {
        CardPart.Axle => "axle",
        CardPart.Gearbox => "gearbox",
        CardPart.Overdrive => "overdrive",
        CardPart.Tyres => "tyres",
        _ => throw new ArgumentOutOfRangeException(nameof(part), part, "No such card."),
    };

    /// <summary>The card for a wanted part; null where there is none.</summary>
    public static CardPart? OnCard(this WantedKind kind) => kind switch
    {
        WantedKind.Axle => CardPart.Axle,
        WantedKind.Transmission => CardPart.Gearbox,
        WantedKind.Overdrive => CardPart.Overdrive,
        WantedKind.Tyres or WantedKind.Wheels => CardPart.Tyres,
        _ => null,
    };
}
