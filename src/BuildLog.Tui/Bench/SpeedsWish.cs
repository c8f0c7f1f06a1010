using BuildLog.Gearing.Quantities;

namespace BuildLog.Tui.Bench;

/// <summary>Which gears, columns and unit the table of speeds shows. It lasts as long as the program.</summary>
public sealed class SpeedsWish
{
    /// <summary>Names of gears; none for all.</summary>
    public IReadOnlyList<string> Gears { get; internal set; } = [];

    /// <summary>Engine speeds of the columns, rev/s; none for the usual ones.</summary>
    public IReadOnlyList<double> EngineSpeeds { get; internal set; } = [];

    /// <summary>Road speeds of the columns, m/s; the cells are engine speeds then. None: the columns are engine speeds.</summary>
    public IReadOnlyList<double> RoadSpeeds { get; internal set; } = [];

    /// <summary>Null for the unit the workbench shows everywhere.</summary>
    public Unit? Unit { get; internal set; }

    internal UnitSystem In(UnitSystem units) => Unit is { } unit ? units with { Speed = unit } : units;
}
