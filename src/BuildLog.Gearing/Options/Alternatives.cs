using System.Globalization;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;
using BuildLog.Gearing.Tyres;
using BuildLog.Gearing.Tyres.Notations;

namespace BuildLog.Gearing.Options;

/// <summary>The changes people ask about before they search: one tyre size up or down, an overdrive, an axle for the cruise, an axle for pulling away.</summary>
/// <remarks>All from what is merely listed. Each is a driveline with one part changed, to be put beside what is fitted: see <see cref="OptionComparison"/>.</remarks>
public static class Alternatives
{
    private const double OneSize = 0.010;
    private const double Shorter = 1.05;

    /// <summary>The next wider size of the same aspect ratio on the same rim; 10 mm, or an inch in diameter for flotation sizes.</summary>
    /// <exception cref="RefusedException">The marking is not known, or has no such neighbour.</exception>
    public static (string Name, Driveline Driveline) TyreSizeUp(Driveline driveline) => Beside(driveline, 1);

    /// <summary>The next narrower size; else as <see cref="TyreSizeUp"/>.</summary>
    public static (string Name, Driveline Driveline) TyreSizeDown(Driveline driveline) => Beside(driveline, -1);

    /// <summary>The listed overdrive ratio that comes nearest to the cruise.</summary>
    /// <exception cref="RefusedException">No cruise can be said.</exception>
    public static (string Name, Driveline Driveline) Overdrive(Driveline driveline, OwnersGoals goals)
        => Nearest(goals, ListedParts.Overdrives().Select(unit => (Spoken($"overdrive {Rounded.Exact(unit.Part!.Ratio!.Value.Value)}"), driveline with { Overdrive = unit.Part })));

    /// <summary>The listed axle ratio that comes nearest to the cruise.</summary>
    /// <exception cref="RefusedException">No axle is fitted, or no cruise can be said.</exception>
    public static (string Name, Driveline Driveline) AxleForCruise(Driveline driveline, OwnersGoals goals) => Nearest(goals, Axles(driveline));

    /// <summary>The tallest listed axle that meets what is wanted for pulling away, crawling and the hill; where nothing of these is wanted, the next shorter one.</summary>
    /// <exception cref="RefusedException">No axle is fitted, or no listed one does.</exception>
    public static (string Name, Driveline Driveline) AxleForLaunch(Driveline driveline, OwnersGoals goals)
    {
        var asked = goals is { HillStart: null, OverallLow: null, Hill: null } ? null : goals with { TopSpeed = null };
        var now = driveline.DrivingAxle?.Ratio?.Value.Value;
        foreach (var (name, whole) in Axles(driveline).OrderBy(axle => axle.Whole.DrivingAxle!.Ratio!.Value.Value))
        {
            if (asked is null ? whole.DrivingAxle!.Ratio!.Value.Value > now * Shorter : PullsAway(whole, asked)) return (name, whole);
        }

        throw new RefusedException("launch", Spoken("No listed axle ratio pulls away as is wanted."), "");
    }

    private static bool PullsAway(Driveline whole, OwnersGoals goals)
        => (goals.OverallLow is not { } low || (LowRange.OverallRatio(whole) is { } overall && low.Wanted.Contains(overall.Value)))
            && (goals.HillStart is not { } start || (HillStart.Of(whole) is { } steepest && start.Wanted.Contains(steepest.Gradient.Value)))
            && (goals.Hill is not { } hill
                || (whole.Step(hill.Gear) is { } step && Pull.Of(whole)?.Hill(step, hill.Speed.ToMeasured(Spoken("road speed"))) is { } held && hill.Wanted.Contains(held.Value)));

    private static IEnumerable<(string Name, Driveline Whole)> Axles(Driveline driveline)
    {
        var fitted = driveline.DrivingAxle ?? throw new RefusedException("nothing-fitted", Spoken("No axle is fitted, so there is none to change."), "fit the axle first");
        var made = PartsMade.Of(driveline.DrivingPosition, driveline);
        return ListedParts.Axles(fitted).Where(axle => made.Contains(axle.Part!.Ratio!.Value.Value)).Select(axle => (
            Name(Rounded.Fixed(axle.Part!.Ratio!.Value.Value, 2), BothAxles.Alike(driveline, axle.Part) is not null), driveline.With(driveline.Transmission, driveline.Overdrive, axle.Part, driveline.Tyres)));
    }

    private static string Name(string ratio, bool both) => both ? Spoken($"both axles {ratio}") : Spoken($"axle {ratio}");

    private static (string Name, Driveline Driveline) Nearest(OwnersGoals goals, IEnumerable<(string Name, Driveline Whole)> tried)
    {
        // Where the wish has no lower end every slower engine meets it: the nearest to what was wanted changes least.
        var (best, name, whole) = tried.Select(each => (Distance: SeparableChecks.Distance(each.Whole, goals), each.Name, each.Whole))
            .OrderBy(each => each.Distance).ThenBy(each => goals.Cruise is [var goal, ..] && CruiseCheck.EngineSpeed(each.Whole, goal) is { } n ? Math.Abs((n.Value / goal.EngineSpeed.Value) - 1) : 0).First();
        return goals.Cruise.Count > 0 && double.IsFinite(best)
            ? (name, whole)
            : throw new RefusedException("cruise", Spoken("No cruise can be said yet: set a cruise goal and enter gears, axle and tyres."), "");
    }

    private static (string Name, Driveline Driveline) Beside(Driveline driveline, int way)
    {
        if (driveline.Tyres is not { Size: { } size } fitted)
            throw new RefusedException("tyres", Spoken("The marking of the tyres is not known, so there is no next size."), "205/65R15");

        var text = Neighbour(size, way) ?? throw new RefusedException("tyres", Spoken($"{size.Designation} has no next size in a series."), "205/65R15");
        return ListedParts.Tyres(fitted, OwnersGoals.None).Called(text) is { } listed ? (text, driveline with { Tyres = listed })
            : ToldPart.Tyres(text, text, fitted).Understood(out var tyres) ? (text, driveline with { Tyres = tyres })
            : throw new RefusedException("tyres", Spoken($"{size.Designation} has no next size in a series."), "205/65R15");
    }

    private static string? Neighbour(TyreSize size, int way)
    {
        var rim = Math.Round(size.RimDiameter / 0.0254, 1);
        return size.AspectRatio is { } aspect
            ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round((size.SectionWidth + (way * OneSize)) * 1000)}/{Math.Round(aspect * 100)}R{rim}")
            : size.Notation == "flotation"
                ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round((size.Dimensions.Diameter / 0.0254) + Flotation.BelowMarked) + way}x{Math.Round(size.SectionWidth / 0.0254, 2):0.00}R{rim}LT")
                : null;
    }
}
