using BuildLog.Data.Components;
using BuildLog.Data.Sessions;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Drivelines;

/// <summary>A tyre's rolling circumference: rolled loaded, then rolled loose, then stated, then the size on the label.</summary>
internal static class TyreNumbers
{
    /// <param name="set">The wheels and tyres.</param>
    /// <param name="rollOuts">Their roll-outs, the latest first.</param>
    public static NumberKnown? Of(WheelSetComponent set, IReadOnlyList<RollOutSession> rollOuts)
        => PartNumbers.Strongest(PartNumbers.Circumference, Units.Metre, Circumference(set, rollOuts));

    private static IEnumerable<(Known, Session?)> Circumference(WheelSetComponent set, IReadOnlyList<RollOutSession> rollOuts)
    {
        foreach (var rolled in PartNumbers.BestKnownFirst(rollOuts.Where(rolled => rolled.Loaded).Select(Rolled))) yield return rolled;
        foreach (var rolled in PartNumbers.BestKnownFirst(rollOuts.Where(rolled => !rolled.Loaded).Select(Rolled))) yield return rolled;
        if (set.StatedCircumference is { } stated)
            yield return (new(ToldPart.Circumference(QuantityText.Read(stated.Text, Kind.Length).OrRefuse()), stated.Source, stated.Text), null);
        if (set.Size is { } size) yield return (new(size.RollingCircumference, Source.Tag, Spoken($"label {size.Designation}")), null);
    }

    private static (Known, Session?) Rolled(RollOutSession session)
        => (new(session.Result().RollingCircumference, Source.Measured, Spoken($"roll-out of {session.Date.InWords()}, {(session.Loaded ? Spoken("loaded") : Spoken("loose wheel"))}")), session);
}
