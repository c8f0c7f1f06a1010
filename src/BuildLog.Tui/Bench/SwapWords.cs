using BuildLog.Data.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Bench;

/// <summary>What a swap moves beside the cruise, a clause each.</summary>
internal static class SwapWords
{
    public static IEnumerable<string> Of(SwapMoves moves, UnitSystem units)
    {
        if (moves.ShownAfter is { } shown)
        {
            var before = moves.ShownBefore is { } was ? Spoken($", {Shown(was, units)} before") : "";
            yield return Spoken($"the speedometer shows {Shown(shown, units)} at a true {Rounded.WithUnit(Rounded.Fixed(units.RoundSpeed, 0), units.Speed)}{before}");
        }

        if (moves.Track is { } track) yield return Spoken($"track {Length(track, units)} {(track.Value > 0 ? Spoken("wider") : Spoken("narrower"))}");
        if (moves.OuterEdge is { } outer) yield return Spoken($"outer side walls {Length(outer, units)} further {(outer.Value > 0 ? Spoken("out") : Spoken("in"))}");
        if (moves.InnerEdge is { } inner) yield return Spoken($"inner side walls {Length(inner, units)} {(inner.Value > 0 ? Spoken("nearer to") : Spoken("further from"))} the springs");
        if (moves.Stall is { } stall) yield return Spoken($"the converter stalls at {Rounded.Value(stall, Units.RevolutionPerMinute)} if its noted stall was behind the other engine");
    }

    // The record tells what is shown at a true 100 km/h; a speedometer is wrong by the same share at every speed.
    private static string Shown(Measured atHundred, UnitSystem units)
        => Rounded.Value(atHundred * (units.RoundSpeed / 100 * (units.Speed.Factor / Units.KilometrePerHour.Factor)), units.Speed);

    private static string Length(Measured change, UnitSystem units) => units.ToACaliper(Math.Abs(change.Value));
}
