using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RunningGear;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.YardCards;

/// <summary>Which tyres will do: by rolling them out in the yard, by their marking, and by what they must carry and stand.</summary>
/// <param name="Wanted">What the rolling circumference has to be.</param>
/// <param name="Sizes">Sizes for the fitted wheels that would do, the smallest first.</param>
/// <param name="Construction">Of the tyres looked for.</param>
/// <param name="LeastLoadIndex">What carries the heavier axle; null where it was not weighed, and for twin tyres, whose second figure counts.</param>
/// <param name="SlowestSymbol">Fast enough for what the vehicle reaches with what is fitted, else for the goals; null where there is none.</param>
public sealed record TyreCard(WindowOfPart Wanted, IReadOnlyList<string> Sizes, Construction Construction, int? LeastLoadIndex, string? SlowestSymbol)
{
    /// <summary>What a yard has room for.</summary>
    public const int Turns = 3;

    /// <summary>Where three do not settle it.</summary>
    public const int MoreTurns = 5;

    private const int MostSizes = 12;

    /// <param name="wanted">The window of the rolling circumference.</param>
    /// <param name="driveline">The vehicle the tyres are for.</param>
    /// <param name="goals">What is wanted of it.</param>
    /// <exception cref="RefusedException">Two wishes exclude each other; the sentence says which, and by how much.</exception>
    public static TyreCard Of(WindowOfPart wanted, Driveline driveline, OwnersGoals goals)
    {
        if (wanted.Contradiction is { } says) throw new RefusedException("window", Spoken($"No tyres can do: {says}"), "");

        var fitted = driveline.DrivingTyres;
        return new(wanted, fitted is null ? [] : Within(wanted.Window, fitted, goals), fitted?.Size?.Construction ?? Construction.Radial, LoadIndexFor(driveline), Fastest(driveline, goals)?.Symbol);
    }

    /// <summary>Which distances mean yes and which no.</summary>
    /// <param name="loaded">The tyre stands under a vehicle; otherwise the wheel is rolled loose.</param>
    /// <param name="turns">Turns of the wheel.</param>
    public RollEdges Edges(bool loaded, int turns = Turns) => RollEdges.Of(Wanted, turns, new(loaded, Construction));

    // What it reaches at the very most counts before a wish: a tyre for the cruise alone is no tyre for the redline.
    private static FastestDriven? Fastest(Driveline driveline, OwnersGoals goals) => FastestDriven.Of(driveline, goals) is { } fastest ? fastest.AtMost ?? fastest : null;

    // Where there are more than a card has room for, those in the middle of the window stay.
    private static IReadOnlyList<string> Within(Window window, TyreSet fitted, OwnersGoals goals)
    {
        var sizes = ListedParts.Tyres(fitted, goals).Where(size => size.Barred is null)
            .Select(size => (size.Name, Rolling: size.Part!.RollingCircumference!.Value.Value))
            .Where(size => window.Contains(size.Rolling)).OrderBy(size => size.Rolling).ToList();
        return [.. sizes.Skip(Math.Max(0, sizes.Count - MostSizes) / 2).Take(MostSizes).Select(size => size.Name)];
    }

    private static int? LoadIndexFor(Driveline driveline)
        => driveline is { AxleMasses: { Front: { } front, Rear: { } rear }, Tyres: { TwinRear: false } tyres }
            ? TyreLoad.IndexFor(Math.Max(front.Value.Interval95.High, rear.Value.Interval95.High), tyres.PassengerOnTruck)
            : null;
}
