using BuildLog.Data.Sessions;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Sheet.Papers.Sessions;
using BuildLog.Tui.Bench;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Sheets;

namespace BuildLog.Tui.Papers;

/// <summary>One session as a measurement record: the evidence of the sheet, with all of its budget.</summary>
public static class RecordOfSession
{
    public static SessionRecord Content(VehicleOnBench bench, Session session, UnitSystem units, Paper paper, DateTimeOffset printed)
    {
        var evidence = SheetOfVehicle.Evidence(session, units);
        var result = MeasurementsWords.Result(session, units);
        return new()
        {
            Id = session.Uid,
            Created = printed,
            Paper = paper,
            PrintedOn = DayText.InWords(printed),
            About = bench.Vehicle.Name,
            Method = evidence.Method,
            Part = session.Component is { SerialNumber.Length: > 0 } part ? Spoken($"{part.Name}, no. {part.SerialNumber}") : session.Subject,
            Date = evidence.Date,
            Who = evidence.Who,
            Conditions = string.IsNullOrEmpty(evidence.Conditions) ? [] : [evidence.Conditions],
            Readings = evidence.Readings,
            Result = evidence.Result,
            Interval95 = evidence.Interval95,
            ExpandedUncertainty = evidence.ExpandedUncertainty,
            Says = result.Says,
            Budget = [.. result.Value.Budget().Select(line => new LabelledLine(line.Input.Name, Rounded.WithUnit(Rounded.Fixed(Units.PercentUnit.FromBase(line.Share), 0), Units.PercentUnit)))],
        };
    }
}
