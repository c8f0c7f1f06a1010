namespace BuildLog.Gearing.Tests.Published.Examples;

/// <summary>Seventy-five driveline examples, row by row: those whose result is printed, and those that were worked out apart from this code.</summary>
/// <remarks>Each figure begins with the row's name; what stands in brackets is the kind of publication that the row, or its formula, was read in.</remarks>
internal static class WorkedExamples
{
    public static PublishedSet Printed() => new("Driveline examples, as printed", "service data, makers' manuals, trade press; named row by row", Standing.Read,
    [
        .. AxleExamples.Printed, .. GearboxExamples.Printed, .. TyreExamples.Printed, .. RoadExamples.Printed, .. ShaftExamples.Printed,
        .. SpeedometerExamples.Printed,
    ]);

    public static PublishedSet WorkedOut() => new("Driveline examples, worked out", "formulas of the trade, by a sheet of its own", Standing.WorkedOut,
    [
        .. AxleExamples.WorkedOut, .. GearboxExamples.WorkedOut, .. TyreExamples.WorkedOut, .. RoadExamples.WorkedOut, .. ShaftExamples.WorkedOut,
        .. SpeedometerExamples.WorkedOut, .. WheelExamples.WorkedOut,
    ]);

    /// <summary>A result with six figures, and nothing but its rounding between it and the engine's.</summary>
    public static Figure Sheet(string name, double workedOut, double computed) => Figure.ToRelative(name, workedOut, computed, 5e-6);
}
