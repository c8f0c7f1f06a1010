using BuildLog.Gearing.Measurements;
using UnitsNet;

namespace BuildLog.Gearing.Quantities;

/// <summary>Doors between our base-unit doubles and UnitsNet's quantity types, for programs that use this library on its own.</summary>
public static class UnitsNetDoors
{
    /// <summary>The value as a length; right for values held in metres.</summary>
    public static Length ToLength(this Measured measured) => Length.FromMeters(measured.Value);

    /// <summary>The value as a road speed; right for values held in metres per second.</summary>
    public static Speed ToSpeed(this Measured measured) => Speed.FromMetersPerSecond(measured.Value);

    /// <summary>The value as an engine speed; right for values held in revolutions per second.</summary>
    public static RotationalSpeed ToEngineSpeed(this Measured measured) => RotationalSpeed.FromRevolutionsPerSecond(measured.Value);

    /// <summary>Metres, taken as exact.</summary>
    public static Measured ToMeasured(this Length length) => length.Meters;

    /// <summary>Metres per second, taken as exact.</summary>
    public static Measured ToMeasured(this Speed speed) => speed.MetersPerSecond;

    /// <summary>Revolutions per second, taken as exact.</summary>
    public static Measured ToMeasured(this RotationalSpeed speed) => speed.RevolutionsPerSecond;
}
