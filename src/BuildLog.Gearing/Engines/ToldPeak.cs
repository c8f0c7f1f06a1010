using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Engines;

/// <summary>The most that a data sheet tells of torque, N·m, or power, W.</summary>
/// <param name="Most">How much.</param>
/// <param name="At">Its engine speed, rev/s; null where it is not told.</param>
/// <param name="Source">Who tells it.</param>
public sealed record ToldPeak(double Most, double? At, Source Source = Source.MakersData)
{
    /// <summary>The peak of torque with the spread that a torque curve from such a sheet has, N·m.</summary>
    public Measured Torque => Measured.From(Most, new Input(
        Spoken("peak torque as told"), TorqueCurve.UsualSpread * Most, new Evidence(Spoken("peak torque"), _ => Spoken("have the engine's torque measured on a rolling road"))));
}
