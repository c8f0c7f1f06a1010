using System.Globalization;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Options;

/// <summary>What is merely sold somewhere: ratios that are listed, in the axle that is fitted, gearboxes, overdrive units, and tyre sizes on the wheels that are fitted.</summary>
/// <remarks>
/// Axle ratios: <see cref="ListedRatios"/>. Gearboxes: <see cref="ListedGears"/>. Overdrive ratios: those that units are commonly sold with, from memory; a listed
/// part is a candidate and decides no finding. Sizes: metric ones, and flotation ones (<see cref="ListedFlotations"/>), of the fitted rim's diameter. Those that do not
/// suit the rim's width, or lie too far from the tyre that is fitted where the owner sets no limit, are barred and say why.
/// </remarks>
public static class ListedParts
{
    // What a body, its arches and its speedometer take without another thought; common practice, no source. Whoever wants more sets a limit.
    private const double FurthestFromFitted = 0.15;
    private const double HighestWall = 0.215;
    private static string Says => Spoken("listed");

    private static readonly IReadOnlyList<double> OverdriveRatios = [0.70, 0.75, 0.78, 0.80, 0.82];

    /// <summary>The fitted axle with each listed pair of gears, its hub reduction kept.</summary>
    public static IReadOnlyList<Candidate<Axle>> Axles(Axle fitted)
        => [.. ListedRatios.Common.Select(teeth => new Candidate<Axle>(
            Spoken($"{teeth.Ratio:0.00} gears ({teeth}) in the axle fitted"),
            fitted with { Ratio = new((fitted.HubReduction?.Value ?? 1) * teeth.ToMeasured(), Source.MakersData, Says), Quoted = null },
            Pool.Listed)
        {
            Typed = teeth.ToString(),
        })];

    /// <summary>Overdrive units of 0.70, 0.75, 0.78, 0.80 and 0.82, input turns per output turn; what they are commonly sold with, from memory.</summary>
    public static IReadOnlyList<Candidate<Overdrive>> Overdrives()
        => [.. OverdriveRatios.Select(ratio => (Ratio: Rounded.Typed(ratio, 2), Name: Spoken($"overdrive {ratio:0.00}")))
            .Select(unit => new Candidate<Overdrive>(unit.Name, ToldPart.Overdrive(unit.Ratio, unit.Name).OrRefuse(), Pool.Listed) { Typed = unit.Ratio })];

    /// <summary>Boxes with a clutch in place of one with a clutch, automatic ones in place of one with a converter. Of what else they have at their ends nobody knows yet.</summary>
    public static IReadOnlyList<Candidate<Transmission>> Gearboxes(Transmission fitted)
        => [.. (fitted.Converter is null ? ListedGears.WithClutch : ListedGears.Automatic).Select(gears => (Gears: gears, Name: Spoken($"gearbox {AsWritten.Numbers(gears)}")))
            .Select(listed => new Candidate<Transmission>(
                listed.Name, new(listed.Name, ToldPart.Gearbox(listed.Gears, listed.Name, null).OrRefuse().Gears) { Converter = fitted.Converter }, Pool.Listed) { Typed = listed.Gears })];

    /// <summary>Every listed size on the fitted wheels, the fitted one left out; none where the fitted tyres' size or circumference is not known.</summary>
    /// <remarks>Barred, with the reason: off the rim's width; more than 15 % wider, narrower, taller or lower than what is fitted where the owner sets no limit.</remarks>
    /// <param name="fitted">The tyres that are on.</param>
    /// <param name="goals">Where a limit of width or diameter is set, that decides.</param>
    public static IReadOnlyList<Candidate<TyreSet>> Tyres(TyreSet fitted, OwnersGoals goals)
        => fitted is { Size: { } size, RollingCircumference.Value.Value: var now }
            ? [.. Sizes(size.RimDiameter).Where(other => other.Designation != size.Designation)
                .Select(other => (Size: other, Rolling: other.RollingCircumference))
                .Select(other => new Candidate<TyreSet>(other.Size.Designation, On(fitted, other.Size, other.Rolling), Pool.Listed)
                {
                    Typed = other.Size.Designation,
                    Barred = OffTheRim(other.Size, size, fitted.Wheel)
                        ?? TooFar(Spoken("width"), other.Size.SectionWidth / size.SectionWidth, goals.TyreWidth)
                        ?? TooFar(Spoken("height"), other.Rolling.Value / now, goals.TyreDiameter),
                })]
            : [];

    /// <summary>The listed part of a text such as <c>37/11</c>; null where none is listed so.</summary>
    public static T? Called<T>(this IReadOnlyList<Candidate<T>> listed, string text)
        where T : class
        => listed.FirstOrDefault(each => each.Typed == text.Trim())?.Part;

    private static TyreSet On(TyreSet fitted, TyreSize size, Measured rolling)
        => fitted with { Name = size.Designation, Size = size, RollingCircumference = new(rolling, Source.MakersData, Says), FreeCircumference = null, LoadedRadius = null, FrontPair = null };

    private static IEnumerable<TyreSize> Sizes(double rim)
    {
        var inches = Math.Round(rim / 0.0254, 1);
        return Metric(inches).Concat(ListedFlotations.On(inches));
    }

    // Wider ones of this height are not sold; from memory.
    private static IEnumerable<TyreSize> Metric(double inches)
    {
        for (var width = 135; width <= 345; width += 10)
        {
            for (var aspect = 30; aspect <= 85; aspect += 5)
            {
                if (TyreSizeText.Read(string.Create(CultureInfo.InvariantCulture, $"{width}/{aspect}R{inches}")).Understood(out var size)
                    && size.OverallDiameter - size.RimDiameter <= 2 * HighestWall) yield return size;
            }
        }
    }

    // A rim that nobody has measured is taken as the one on which the fitted tyre sits best.
    private static string? OffTheRim(TyreSize size, TyreSize fitted, RunningGear.Wheel? wheel)
    {
        var inches = wheel?.RimWidth is { } width ? width.Value.Value / 0.0254 : fitted.RimWidth.Measuring;
        return inches >= size.RimWidth.Low - 1e-6 && inches <= size.RimWidth.High + 1e-6 ? null
            : Spoken($"listed tyre not made for a rim of {Rounded.Fixed(inches, 1)} in{(wheel?.RimWidth is null ? Spoken(" (best for the one fitted; not measured)") : "")}");
    }

    // The owner's limit bounds it above where there is one.
    private static string? TooFar(string how, double share, LengthLimit? limit)
        => share < 1 - FurthestFromFitted || (limit is null && share > 1 + FurthestFromFitted)
            ? Spoken($"listed tyre over {FurthestFromFitted * 100:0} % off the {how} of the one fitted{(limit is null ? Spoken(" (no limit is set)") : "")}")
            : null;
}
