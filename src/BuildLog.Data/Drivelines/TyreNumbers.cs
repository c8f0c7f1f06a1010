using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Drivelines;

/// <summary>A tyre's rolling circumference: rolled loaded, then rolled loose, then stated, then the size on the label.</summary>
/// <remarks>
/// Where the roll-out that counts excludes another and none bears it out, nobody knows which is wrong: they are joined by <see cref="LineThroughOrigin"/>, as the
/// marks of one roll-out are, and the ± holds them.
/// </remarks>
internal static class TyreNumbers
{
    /// <param name="set">The wheels and tyres.</param>
    /// <param name="rollOuts">Their roll-outs, the latest first.</param>
    public static NumberKnown? Of(WheelSetComponent set, IReadOnlyList<RollOutSession> rollOuts)
    {
        List<(Known Known, Session? Session)> rolled =
        [
            .. PartNumbers.BestKnownFirst(rollOuts.Where(roll => roll.Loaded).Select(Rolled)),
            .. PartNumbers.BestKnownFirst(rollOuts.Where(roll => !roll.Loaded).Select(Rolled)),
        ];
        var number = PartNumbers.Strongest(PartNumbers.Circumference, Units.Metre, [.. rolled, .. Told(set)]);
        return RoomForAll([.. rolled.Select(roll => roll.Known)]) is { } room ? number! with { Used = room, PassedOver = [number.Used, .. number.PassedOver], LeavesRoom = true } : number;
    }

    /// <summary>Metres a turn without load, by the loose roll-out that counts; null where there is none.</summary>
    /// <param name="rollOuts">The latest first.</param>
    public static Known? Free(IEnumerable<RollOutSession> rollOuts)
        => PartNumbers.BestKnownFirst(rollOuts.Where(roll => !roll.Loaded).Select(roll => Evidence(roll, roll.Result().Measured))).Select(roll => roll.Known).FirstOrDefault();

    private static Known? RoomForAll(List<Known> rolled)
    {
        if (rolled is not [var counts, .. var others]
            || others.Any(other => counts.Value.AgreesWith(other.Value)) || !others.Any(other => LineThroughOrigin.Exclude(counts.Value, other.Value)))
            return null;

        var apart = new Evidence(Spoken("roll-outs that exclude each other"), _ => Spoken("roll the tyres out once more, and strike the roll-out that is wrong"));
        return new(LineThroughOrigin.Fit([.. rolled.Select(roll => ((Measured)1, roll.Value))], apart).Slope, Source.Measured, Spoken("roll-outs that exclude each other"));
    }

    private static IEnumerable<(Known, Session?)> Told(WheelSetComponent set)
    {
        if (set.StatedCircumference is { } stated)
            yield return (new(ToldPart.Circumference(QuantityText.Read(stated.Text, Kind.Length).OrRefuse()), stated.Source, stated.InWords), null);
        if (set.Size is { } size) yield return (new(size.RollingCircumference, Source.Tag, Spoken($"label {size.Designation}")), null);
    }

    private static (Known Known, Session? Session) Rolled(RollOutSession session) => Evidence(session, session.Result().RollingCircumference);

    private static (Known Known, Session? Session) Evidence(RollOutSession session, Measured circumference)
        => (new(circumference, Source.Measured, Spoken($"roll-out of {session.Day.InWords}, {(session.Loaded ? Spoken("loaded") : Spoken("loose wheel"))}")), session);
}
