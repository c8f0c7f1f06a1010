using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>A vehicle's odometer never shows less than it showed before, unless it was replaced or reset.</summary>
internal static class OdometerRunsForward
{
    // Units are stored as metres in binary; the same reading in two units may differ in the last digit.
    private const double Slack = 0.5;

    /// <exception cref="RefusedException">It would run backwards; the sentence names the other reading.</exception>
    public static void Check(OdometerLine line, Vehicle vehicle, OdometerReading? reading, Moment moment)
    {
        if (reading is null) return;

        var stretch = line.StretchAt(moment);
        foreach (var (when, _, other, what) in line.All.Where(shown => shown.Stretch == stretch))
        {
            if (when < moment && other.Metres > reading.Metres + Slack)
                throw Refused(Spoken($"The odometer of {vehicle} runs backwards: {reading.InWords} on {moment.Day.InWords()} is less than {other.InWords} on {when.Day.InWords()} ({what})."), other.Text);
            if (when > moment && other.Metres < reading.Metres - Slack)
                throw Refused(Spoken($"The odometer of {vehicle} runs backwards: {reading.InWords} on {moment.Day.InWords()} is more than {other.InWords} later, on {when.Day.InWords()} ({what})."), other.Text);
        }
    }

    /// <exception cref="RefusedException">It showed less when the part came off than when it was fitted.</exception>
    public static void CheckBetween(OdometerLine line, Fitment fitment, Moment start, Moment end)
    {
        if (line.StretchAt(start) == line.StretchAt(end) && fitment is { FromOdometer: { } on, ToOdometer: { } off } && on.Metres > off.Metres + Slack)
            throw Refused(Spoken($"The odometer of {fitment.Vehicle} runs backwards: {off.InWords} on {end.Day.InWords()} is less than {on.InWords} on {start.Day.InWords()} ({fitment.Component} fitted)."), on.Text);
    }

    /// <summary>The readings on each stretch between two changes, taken together.</summary>
    /// <exception cref="RefusedException">One would run backwards.</exception>
    public static void Check(OdometerLine line, Vehicle vehicle)
    {
        foreach (var (before, after) in line.All.Zip(line.All.Skip(1)))
        {
            if (before.Stretch == after.Stretch && after.Reading.Metres < before.Reading.Metres - Slack)
                throw Refused(Spoken($"The odometer of {vehicle} runs backwards: {after.Reading.InWords} on {after.When.Day.InWords()} ({after.What}) is less than {before.Reading.InWords} on {before.When.Day.InWords()} ({before.What})."), before.Reading.Text);
        }
    }

    private static RefusedException Refused(string sentence, string example) => new("odometer", sentence, example);
}
