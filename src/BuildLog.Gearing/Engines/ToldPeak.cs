using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Engines;

/// <summary>The most that a data sheet tells of torque, N·m, or power, W.</summary>
/// <param name="Most">How much.</param>
/// <param name="At">Its engine speed, rev/s; null where it is not told.</param>
/// <param name="Source">Who tells it.</param>
/// <exception cref="RefusedException">A peak or its engine speed that is not above zero.</exception>
public sealed record ToldPeak(double Most, double? At, Source Source = Source.MakersData)
{
    /// <summary>N·m or W; above zero.</summary>
    public double Most { get; init => field = value.AboveZero(Spoken("A peak of torque or power"), "210"); } = Most.AboveZero(Spoken("A peak of torque or power"), "210");

    /// <summary>Its engine speed, rev/s; above zero, null where it is not told.</summary>
    public double? At { get; init => field = value?.AboveZero(Spoken("The engine speed of a peak, rev/s,"), "40"); } = At?.AboveZero(Spoken("The engine speed of a peak, rev/s,"), "40");

    /// <summary>The peak of torque with the spread that a torque curve from such a sheet has, N·m.</summary>
    public Measured Torque => Measured.From(Most, new Input(
        Spoken("peak torque as told"), TorqueCurve.UsualSpread * Most, new Evidence(Spoken("peak torque"), _ => Spoken("have the engine's torque measured on a rolling road"))));
}
