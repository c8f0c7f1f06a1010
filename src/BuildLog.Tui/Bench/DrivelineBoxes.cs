using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Workbench;

namespace BuildLog.Tui.Bench;

/// <summary>The driveline as the strip's boxes: what sits where, its key number, and how that is known.</summary>
public static class DrivelineBoxes
{
    public static DrivelineModel Of(Driveline driveline, IReadOnlyList<Finding> findings, UnitSystem units)
    {
        var engine = Box(Position.Engine, driveline.Engine?.Name, driveline.Engine?.Redline, Units.RevolutionPerMinute);
        var gearbox = Box(Position.Transmission, driveline.Transmission?.Name, driveline.Transmission?.Top?.Ratio, Units.One);
        var trunk = new List<DrivelineBox> { engine, gearbox };
        if (driveline.Overdrive is { } overdrive) trunk.Add(Box(Position.Overdrive, overdrive.Name, overdrive.Ratio, Units.One));
        if (driveline.TransferCase is { } transfer) trunk.Add(Box(Position.TransferCase, transfer.Name, transfer.High, Units.One));

        var shaft = driveline.Propshaft is { } propshaft ? [Box(Position.Propshaft, propshaft.Name, null, Units.One)] : Array.Empty<DrivelineBox>();
        var frontShaft = driveline.FrontPropshaft is { } other ? [Box(Position.FrontPropshaft, other.Name, null, Units.One)] : Array.Empty<DrivelineBox>();
        var rear = Axle(Position.RearAxle, driveline.RearAxle);
        var tyres = Box(Position.Tyres, driveline.Tyres?.Name, driveline.Tyres?.RollingCircumference, units.Length);
        var frontTyres = (driveline.Tyres?.FrontPair ?? driveline.LoneFrontTyres) is { } pair ? [Box(Position.FrontTyres, pair.Name, pair.RollingCircumference, units.Length)] : Array.Empty<DrivelineBox>();
        if (driveline.FrontAxle is null) return new([.. trunk, .. shaft, rear, tyres, .. frontTyres], []);

        var front = Axle(Position.FrontAxle, driveline.FrontAxle);
        return driveline.RearAxle is null ? new([.. trunk, .. frontShaft, front, tyres, .. frontTyres], []) : new(trunk, [[.. frontShaft, front, .. frontTyres], [.. shaft, rear, tyres]]);

        DrivelineBox Axle(Position position, Axle? axle) => Box(position, axle?.Name, axle?.Ratio, Units.One);

        DrivelineBox Box(Position position, string? name, Known? known, Unit unit) => new(
            position.ToString(),
            position.InWords(),
            name,
            known is null ? "" : Rounded.Value(known.Value, unit),
            known is null || known.Value.IsExact ? "" : Rounded.HalfWidth(unit.FromBase(known.Value.Expanded95)),
            known?.Source.InShort() ?? "",
            name is null ? null : FindingsWords.AtJointBefore(position, findings),
            known is null || known.Says.Length == 0 ? null : [known.Says]);
    }

    private static string InShort(this Source source) => source switch
    {
        Source.TeethCounted => Spoken("teeth"),
        Source.Measured => Spoken("measured"),
        Source.MakersData => Spoken("maker"),
        Source.Tag => Spoken("tag"),
        Source.OwnersWord => Spoken("owner"),
        _ => Spoken("assumed"),
    };
}
