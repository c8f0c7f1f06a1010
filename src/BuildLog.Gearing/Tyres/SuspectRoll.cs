using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>A mark on the floor that the others do not support.</summary>
/// <param name="Index">Its place among the readings, from 0.</param>
/// <param name="Says">How far off it lies, and the slip that would explain it.</param>
/// <remarks>
/// Each mark is held against the line through the others; further than four standard errors is no accident of tape and chalk. Where several are, the
/// furthest is named, since one bad mark spoils the line for the good ones. Two marks that disagree are both named.
/// <para>Not for: a slope or soft ground, which bends all marks alike.</para>
/// </remarks>
public sealed record SuspectRoll(int Index, string Says)
{
    /// <summary>The marks of a roll-out to doubt; none where all agree, or where there is one.</summary>
    public static IReadOnlyList<SuspectRoll> Among(RollOut roll)
    {
        if (roll.Readings.Count < 2) return [];
        var misfits = Enumerable.Range(0, roll.Readings.Count).Select(k => Misfit(roll, k)).Where(misfit => misfit.Errors > LineThroughOrigin.Excluding).ToList();
        if (roll.Readings.Count == 2) return misfits.ConvertAll(misfit => misfit.Named);
        return misfits.Count == 0 ? [] : [misfits.MaxBy(misfit => misfit.Errors)!.Named];
    }

    private static OneMark Misfit(RollOut roll, int k)
    {
        var mark = roll.Readings[k];
        var others = RollOut.Of([.. roll.Readings.Where((_, other) => other != k)], roll.How).Measured;
        var error = Math.Sqrt(
            ((Math.Pow(roll.How.Tape, 2) + Math.Pow(roll.How.Align * others.Value, 2)) / 3) + Math.Pow(mark.Turns * others.StandardUncertainty, 2));
        var off = mark.Distance - (others.Value * mark.Turns);
        var turns = Math.Round(off / others.Value);
        var slip = turns != 0 && Math.Abs(off - (turns * others.Value)) <= LineThroughOrigin.Excluding * error;
        return new(Math.Abs(off) / error, new(k, slip ? Miscounted(turns) : Misread(off, error)));
    }

    private static string Miscounted(double turns) => Math.Abs(turns) == 1
        ? Spoken($"one wheel turn {(turns > 0 ? Spoken("was not counted") : Spoken("too many"))}")
        : Spoken($"{Math.Abs(turns):0} wheel turns {(turns > 0 ? Spoken("were not counted") : Spoken("too many"))}");

    private static string Misread(double off, double error)
        => Spoken($"it lies {Rounded.WithUnit(Rounded.Value(Math.Abs(off) * 1000, 2 * error * 1000), Units.Millimetre)} too {(off > 0 ? Spoken("far") : Spoken("near"))}");

    private sealed record OneMark(double Errors, SuspectRoll Named);
}
