namespace BuildLog.Gearing.Tests.Published;

/// <summary>One figure in print and what the engine makes of the same inputs.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Printed">The figure as printed, in the unit of the print.</param>
/// <param name="Computed">The engine's, in the same unit.</param>
/// <param name="Tolerance">Half the last printed digit, unless the set says otherwise.</param>
public sealed record Figure(string Name, double Printed, double Computed, double Tolerance)
{
    public double Deviation => Math.Abs(Computed - Printed);

    public double RelativeDeviation => Printed == 0 ? Deviation : Deviation / Math.Abs(Printed);

    /// <summary>A figure known to so many decimals.</summary>
    public static Figure ToPlaces(string name, double printed, int decimals, double computed)
        => new(name, printed, computed, (0.5 * Math.Pow(10, -decimals)) + 1e-12);

    /// <summary>A figure that is exact, or printed to so many digits that only rounding in the machine is left.</summary>
    public static Figure ToRelative(string name, double printed, double computed, double relative)
        => new(name, printed, computed, relative * Math.Abs(printed));
}
