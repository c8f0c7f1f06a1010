using BuildLog.Data.Costs;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Sheets;

/// <summary>What an insurer asks first. A value that was agreed is not kept in the record; what was spent is no value, but it is what the receipts show.</summary>
internal static class PowerAndValueOfVehicle
{
    public static IEnumerable<LabelledLine> Of(VehicleOnBench bench, VehicleFolder folder, UnitSystem units)
    {
        yield return new(Spoken("Engine power"), bench.Driveline.Engine?.Torque is { } torque ? $"{Rounded.WithInterval(torque.PeakPower, units.Power)}, {torque.Source.InWords()}" : null);
        yield return new(Spoken("Agreed value"), null);
        yield return new(Spoken("Spent on it, as recorded"), string.Join(" · ", Money.Totals(folder.Costs.Select(cost => cost.Amount))));
    }
}
