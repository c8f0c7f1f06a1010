using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Engines;

/// <summary>One point of a full-load torque curve.</summary>
/// <param name="EngineSpeed">Revolutions per second, above zero.</param>
/// <param name="Torque">Newton metres at the flywheel, above zero.</param>
/// <param name="Text">The point as typed; empty where it was drawn.</param>
/// <exception cref="RefusedException">An engine speed or a torque that is not above zero.</exception>
public sealed record TorquePoint(double EngineSpeed, double Torque, string Text = "")
{
    private const string Right = "1500:180 Nm";
    private const double Strongest = 5000;

    /// <summary>n, rev/s; above zero.</summary>
    public double EngineSpeed { get; init => field = AboveZero(value, Spoken("engine speed")); } = AboveZero(EngineSpeed, Spoken("engine speed"));

    /// <summary>T, N·m at the flywheel; above zero.</summary>
    public double Torque { get; init => field = AboveZero(value, Spoken("torque")); } = AboveZero(Torque, Spoken("torque"));

    /// <summary>Watts.</summary>
    public double Power => 2 * Math.PI * EngineSpeed * Torque;

    /// <summary>Reads <c>1500:180 Nm</c>: engine speed in rev/min, a colon, the torque with its unit.</summary>
    public static Parsed<TorquePoint> Read(string text)
    {
        var sides = text.Split(':');
        if (sides.Length != 2) return new Refusal("torque", Spoken($"{Shown.Quoted(text)} is not a torque point: write engine speed, a colon, torque."), Right);

        return Part(CruiseGoal.ReadEngineSpeed(sides[0]), text).Then(speed =>
            Part(QuantityText.ReadPlain(sides[1], Kind.Torque), text).Then<TorquePoint>(torque => torque.Value is > 0 and <= Strongest
                ? new TorquePoint(speed.Value, torque.Value, text.Trim())
                : new Refusal("torque", Spoken($"{Shown.Quoted(text)}: an engine's torque is more than 0, at most 5000 N·m."), Right)));
    }

    private static double AboveZero(double value, string what)
        => value is > 0 and < double.PositiveInfinity ? value : throw new RefusedException("torque", Spoken($"At full load the {what} is more than 0, not {value:G6}."), Right);

    private static Parsed<Typed> Part(Parsed<Typed> part, string whole)
        => part.Refusal is { } refusal ? new Refusal("torque", $"{Shown.Quoted(whole)}: {refusal.Message}", Right) : part;
}
