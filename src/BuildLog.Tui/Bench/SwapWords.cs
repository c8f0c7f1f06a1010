using BuildLog.Data.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Bench;

/// <summary>What a swap moves beside the cruise, a clause each.</summary>
internal static class SwapWords
{
    public static IEnumerable<string> Of(SwapMoves moves)
    {
        if (moves.ShownAfter is { } shown)
        {
            var before = moves.ShownBefore is { } was ? $", {Rounded.Value(was, Units.KilometrePerHour)} before" : "";
            yield return $"the speedometer shows {Rounded.Value(shown, Units.KilometrePerHour)} at a true 100 km/h{before}";
        }

        if (moves.Track is { } track) yield return $"track {Length(track)} {(track.Value > 0 ? "wider" : "narrower")}";
        if (moves.OuterEdge is { } outer) yield return $"outer side walls {Length(outer)} further {(outer.Value > 0 ? "out" : "in")}";
        if (moves.InnerEdge is { } inner) yield return $"inner side walls {Length(inner)} {(inner.Value > 0 ? "nearer to" : "further from")} the springs";
        if (moves.Stall is { } stall) yield return $"the converter stalls at {Rounded.Value(stall, Units.RevolutionPerMinute)} if its noted stall was behind the other engine";
    }

    private static string Length(Measured change) => Rounded.WithUnit(Rounded.Fixed(Math.Abs(Units.Millimetre.FromBase(change.Value)), 0), Units.Millimetre);
}
