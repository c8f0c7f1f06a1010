using BuildLog.Sheet.Content;
using BuildLog.Sheet.Layout;
using BuildLog.Sheet.Paper;

namespace BuildLog.Sheet.Regions;

/// <summary>Tyres and wheels, axle by axle, against what the axle carries.</summary>
internal static class RunningGearRegion
{
    private static IReadOnlyList<Column> Columns =>
        [new(Spoken("Axle"), 0.7), new(Spoken("Tyre"), 1.5), new(Spoken("Wheel"), 2.3), new(Spoken("Carries, laden"), 1.1), new(Spoken("Tyres may carry"), 1.2), new(Spoken("Tyres good to"), 1.1)];

    public static Block Of(SheetContent sheet) =>
        new Section(Spoken("Tyres, wheels and axle masses"), sheet.RunningGear.Count == 0 ? Missing.Paragraph : new Table(Columns, [.. sheet.RunningGear.Select(RowOf)]));

    private static IReadOnlyList<Cell> RowOf(RunningGearRow row)
    {
        string?[] texts = [row.Axle, row.Tyre, row.Wheel, row.AxleMass, row.TyresCarry, row.SpeedLimit];
        return [.. texts.Select(text => Missing.CellOf(text, TypeScale.Body))];
    }
}
