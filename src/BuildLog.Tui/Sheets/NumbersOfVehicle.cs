using BuildLog.Data.Identity;
using BuildLog.Gearing.Drivelines;
using BuildLog.Sheet.Content;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Sheets;

/// <summary>What identifies a vehicle, for the title of its papers: its own numbers first, then those that were read off it and say something new.</summary>
internal static class NumbersOfVehicle
{
    public static IReadOnlyList<LabelledLine> Of(VehicleOnBench bench, VehicleFolder folder)
    {
        var vehicle = bench.Vehicle;
        LabelledLine[] own =
        [
            new(Spoken("Vehicle"), vehicle.Description),
            new(Spoken("Chassis number"), Known(vehicle.ChassisNumber, Identified.Chassis, folder)),
            new(Spoken("Engine number"), Known(bench.Fitted.At(Position.Engine)?.SerialNumber ?? "", Identified.Engine, folder)),
            new(Spoken("Registration"), vehicle.Registration),
        ];
        var told = own.Select(line => line.Value).ToHashSet(StringComparer.OrdinalIgnoreCase);
        return [.. own, .. folder.Numbers.Where(number => told.Add(number.Number)).Select(Line)];
    }

    // What the vehicle's card says counts; where it says nothing, what was read off the metal.
    private static string Known(string card, Identified identified, VehicleFolder folder)
        => card.Length > 0 ? card : folder.Numbers.FirstOrDefault(number => number.Identified == identified)?.Number ?? "";

    private static LabelledLine Line(IdentityNumber number) => new(
        SheetOfVehicle.Sentence(number.Identified is Identified.DateCode ? number.Identified.InWords() : Spoken($"{number.Identified.InWords()} number")),
        number.Where.Length > 0 ? $"{number.Number} ({number.Where})" : number.Number);
}
