using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Fitments;

/// <summary>A vehicle's odometer never shows less than it showed before.</summary>
internal static class OdometerRunsForward
{
    // Units are stored as metres in binary; the same reading in two units may differ in the last digit.
    private const double Slack = 0.5;

    /// <exception cref="RefusedException">It would run backwards; the sentence names the other reading.</exception>
    public static void Check(IReadOnlyList<Fitment> ofVehicle, Vehicle vehicle, OdometerReading? reading, Moment moment)
    {
        if (reading is null) return;

        foreach (var (when, other, what) in Readings(ofVehicle).OrderBy(entry => entry.When))
        {
            if (when < moment && other.Metres > reading.Metres + Slack)
                throw Refused($"The odometer of {vehicle} runs backwards: {reading.InWords} on {moment.Day.InWords()} is less than {other.InWords} on {when.Day.InWords()} ({what}).", other.Text);
            if (when > moment && other.Metres < reading.Metres - Slack)
                throw Refused($"The odometer of {vehicle} runs backwards: {reading.InWords} on {moment.Day.InWords()} is more than {other.InWords} later, on {when.Day.InWords()} ({what}).", other.Text);
        }
    }

    /// <exception cref="RefusedException">It showed less when the part came off than when it was fitted.</exception>
    public static void CheckBetween(Fitment fitment, Moment start, Moment end)
    {
        if (fitment is { FromOdometer: { } on, ToOdometer: { } off } && on.Metres > off.Metres + Slack)
            throw Refused($"The odometer of {fitment.Vehicle} runs backwards: {off.InWords} on {end.Day.InWords()} is less than {on.InWords} on {start.Day.InWords()} ({fitment.Component} fitted).", on.Text);
    }

    private static IEnumerable<(Moment When, OdometerReading Reading, string What)> Readings(IReadOnlyList<Fitment> ofVehicle)
    {
        foreach (var fitment in ofVehicle)
        {
            if (fitment.FromOdometer is { } on) yield return (fitment.Start, on, $"{fitment.Component} fitted");
            if (fitment is { End: { } end, ToOdometer: { } off }) yield return (end, off, $"{fitment.Component} taken off");
        }
    }

    private static RefusedException Refused(string sentence, string example) => new("odometer", sentence, example);
}
