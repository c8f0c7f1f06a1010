using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RunningGear;

/// <summary>How far an axle moves from ride height; metres, null where it was not measured.</summary>
/// <param name="Droop">Down, wheels hanging.</param>
/// <param name="Bump">Up, to the stop.</param>
/// <exception cref="RefusedException">A length below zero.</exception>
public sealed record WheelTravel(Known? Droop = null, Known? Bump = null)
{
    /// <summary>Down, wheels hanging; metres, zero or more.</summary>
    public Known? Droop { get; init => field = value.NotBelowZero(Spoken("A droop"), "90 mm"); } = Droop.NotBelowZero(Spoken("A droop"), "90 mm");

    /// <summary>Up, to the stop; metres, zero or more.</summary>
    public Known? Bump { get; init => field = value.NotBelowZero(Spoken("A bump travel"), "80 mm"); } = Bump.NotBelowZero(Spoken("A bump travel"), "80 mm");
}
