using BuildLog.Data;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.YardCards;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers.Cards;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Hunting;

namespace BuildLog.Tui.YardCards;

/// <summary>What to take to the yard for one part of a vehicle: the windows of today, what the hunted part must have, and what it has to match.</summary>
/// <param name="Bench">The vehicle.</param>
/// <param name="Part">What is looked for.</param>
/// <param name="Allowed">What today's goals allow the part, in the units to show; one window, or one for each gear that matters.</param>
/// <param name="Windows">The same within what the owner set: what a count brought back is judged by.</param>
/// <param name="Musts">What every hunted part of this kind must have.</param>
/// <param name="Units">The units to show.</param>
internal sealed record CardOfVehicle(VehicleOnBench Bench, CardPart Part, IReadOnlyList<WindowOfPart> Allowed, IReadOnlyList<WindowOfPart> Windows, IReadOnlyList<MustHave> Musts, UnitSystem Units)
{
    /// <param name="shop">The record.</param>
    /// <param name="bench">The vehicle.</param>
    /// <param name="part">What is looked for.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="hunted">The hunt whose windows count too, judged on that vehicle; null for none.</param>
    /// <exception cref="RefusedException">Nothing wanted depends on the part, or too little is known.</exception>
    public static CardOfVehicle Read(Shop shop, VehicleOnBench bench, CardPart part, UnitSystem units, HuntBench? hunted)
    {
        if (part == CardPart.FrontAxle && bench.Driveline.FrontAxle is null)
            throw new RefusedException("window", Spoken($"{bench.Vehicle.Name} has no front axle that is driven, so there is no card for one."), "axle");

        var position = hunted is not null && HuntedPlace.Of(bench.Driveline, hunted.Wanted) is { } place ? place : Place(bench.Driveline, part);
        var windows = WantedWindows.At(bench, position)
            .Select(window => window with { Unit = units.Shown(window.Unit) })
            .OrderByDescending(window => window.IsOfTopGear).ToList();
        if (windows.Count == 0)
        {
            throw new RefusedException(
                "window", Spoken($"Nothing wanted of {bench.Vehicle.Name} depends on the {part.InWords()} yet, or the other parts' numbers are not known: set a cruise goal and enter them."), "");
        }

        var hunts = hunted is null ? Hunted(shop, bench, part).ToList() : [hunted.Wanted];
        return new(bench, part, windows, [.. windows.Select(window => AsJudged(window, hunted?.Wanted))], [.. hunts.SelectMany(wanted => wanted.MustHaves)], units)
        {
            Position = position,
            Hunt = hunts is [var only] ? only : null,
            JudgedWith = hunted?.Says ?? "",
        };
    }

    /// <summary>Where it goes.</summary>
    public required Position Position { get; init; }

    /// <summary>The one hunt it is for, whose price and deadline count; null for none, or several.</summary>
    public WantedPart? Hunt { get; init; }

    /// <summary>What of a plan it is judged with; empty where it is hunted for none.</summary>
    public string JudgedWith { get; private init; } = "";

    private static Position Place(Driveline driveline, CardPart part) => part switch
    {
        CardPart.Gearbox => Position.Transmission,
        CardPart.Overdrive => Position.Overdrive,
        CardPart.Tyres => Position.Tyres,
        CardPart.FrontAxle => Position.FrontAxle,
        _ => driveline.DrivingPosition,
    };

    private bool IsOfTheOtherAxle => Position == Bench.Driveline.OtherPosition;

    private Axle? Ours => IsOfTheOtherAxle ? Bench.Driveline.OtherAxle : Bench.Driveline.DrivingAxle;

    /// <summary>What is hunted of the kind.</summary>
    public static IEnumerable<WantedPart> Hunted(Shop shop, VehicleOnBench bench, CardPart part)
        => HuntedPlace.Hunts(shop, bench, Place(bench.Driveline, part));

    private static WindowOfPart AsJudged(WindowOfPart window, WantedPart? hunted)
        => hunted?.Windows.FirstOrDefault(each => each.Quantity == WantedWindows.Quantity(window)) is { } limits ? window.Within(limits.Read(), Spoken("window kept with this hunt")) : window;

    public AxleCard Axle() => AxleCard.Of(Windows[0], Ours?.HubReduction?.Value.Value ?? 1);

    public GearboxCard Gearbox() => GearboxCard.Of(Windows, Part.InWords());

    public TyreCard Tyres() => TyreCard.Of(Windows[0], Bench.Driveline, Bench.Goals);

    /// <exception cref="RefusedException">No such part can do; the sentence says why.</exception>
    public YardCard Content(Paper paper, DateTimeOffset printed) => Part switch
    {
        CardPart.Gearbox => OfGearbox(Gearbox(), Empty(paper, printed)),
        CardPart.Overdrive => OfOverdrive(Gearbox(), Empty(paper, printed)),
        CardPart.Tyres => OfTyres(Tyres(), Empty(paper, printed)),
        _ => OfAxle(Axle(), Empty(paper, printed)),
    };

    private YardCard Empty(Paper paper, DateTimeOffset printed) => new()
    {
        Id = Bench.Vehicle.Uid,
        Created = printed,
        Paper = paper,
        PrintedOn = Forms.DayText.InWords(printed),
        About = Bench.Vehicle.Name,
        Part = IsOfTheOtherAxle ? Position.InWords() : Part.InWords(),
        Wanted = [.. Windows.SelectMany(Wanted), .. JudgedWith.Length > 0 ? (string[])[$"  {JudgedWith}"] : [], .. NotCured(), .. Hunt?.Deadline is { } last ? (string[])[Spoken($"needed by {Forms.DayText.InWords(last)}")] : []],
    };

    private YardCard OfAxle(AxleCard axle, YardCard card) => card with
    {
        Ways = AxleCardWords.Ways(axle),
        Notes = [.. AxleCardWords.BothAxles(Bench.Driveline, Position), .. AxleCardWords.Notes(axle)],
        Blanks = Blanks(AxleCardWords.Blanks(Bench.Driveline, Position, Units)),
        Cautions = AxleCardWords.Cautions,
    };

    private YardCard OfGearbox(GearboxCard gearbox, YardCard card) => card with
    {
        Ways = GearboxCardWords.Ways(gearbox),
        Notes = GearboxCardWords.Notes,
        Blanks = Blanks(GearboxCardWords.Blanks(gearbox, Bench.Driveline, Units)),
        Cautions = GearboxCardWords.Cautions,
    };

    // A unit is counted like a gear: its output is turned, its input counted.
    private YardCard OfOverdrive(GearboxCard unit, YardCard card) => card with
    {
        Ways = OverdriveCardWords.Ways(unit),
        Notes = OverdriveCardWords.Notes,
        Blanks = Blanks(OverdriveCardWords.Blanks(Bench.Driveline, Units)),
        Cautions = OverdriveCardWords.Cautions,
    };

    private YardCard OfTyres(TyreCard tyres, YardCard card) => card with
    {
        Ways = TyreCardWords.Ways(tyres, Units.Length),
        Notes = [.. TyreCardWords.Notes(tyres, Bench.Driveline)],
        Blanks = Blanks(TyreCardWords.Blanks(tyres, Bench.Driveline, Units)),
        Cautions = TyreCardWords.Cautions,
    };

    private IReadOnlyList<CardBlank> Blanks(IEnumerable<CardBlank> blanks) => [.. CardBlanks.With(blanks, Musts), .. CardBlanks.OfOffer(Hunt?.Most)];

    // A clash of this part that narrows no window of it: whoever pays should know.
    private IEnumerable<string> NotCured()
        => Bench.Findings
            .Where(finding => finding.Verdict == Verdict.Clash && (finding.Between.Contains(Position) || (Position == Position.Tyres && finding.Between.Contains(Bench.Driveline.DrivingPosition)))
                && !finding.Windows.Any(window => window.Position == Position))
            .Select(finding => finding.Title).Distinct()
            .Select(title => Spoken($"  does not cure the clash of {char.ToLowerInvariant(title[0])}{title[1..]}"));

    private static IEnumerable<string> Wanted(WindowOfPart window)
    {
        yield return Spoken($"wanted: {window.InWords()}") + (window.SureInWords(window.Unit) is { } sure ? Spoken($", for certain {sure}") : "") + window.InPractice(window.Unit) + (window.IsMade ? "" : Spoken("; none is made so"));
        if (window.Lowest is { } both && both.InWords == window.Highest?.InWords)
        {
            yield return Spoken($"  for {both.InWords}");
        }
        else
        {
            if (window.Lowest is { } lowest) yield return Spoken($"  not lower: {lowest.InWords}");
            if (window.Highest is { } highest) yield return Spoken($"  not higher: {highest.InWords}");
        }

        if (window.SureWindow is null) yield return Spoken($"  no count means a sure yes yet: {window.OpenedBy ?? Spoken("it is too narrow for what is known of the other parts")}.");
    }
}
