using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>What stops a vehicle from going faster.</summary>
public enum TopSpeedLimit
{
    /// <summary>The engine has no more power than the road takes.</summary>
    Power,

    /// <summary>The engine turns as fast as it may, with power to spare.</summary>
    Gear,

    /// <summary>The torque curve ends there, with power to spare, or there are gears that nobody told: it goes as fast at least, and nobody knows how much faster.</summary>
    Unknown,
}

/// <summary>How fast it goes on the level, in which gear, and what ends it.</summary>
/// <param name="Speed">m/s; where the limit is not known, what it reaches at least.</param>
/// <param name="Step">The gear it is reached in.</param>
/// <param name="Limit">What ends it.</param>
/// <param name="Most">m/s; what it cannot exceed: the speed itself, or where the limit is not known what redline or power leave; null where neither says.</param>
/// <remarks>
/// <code>
/// power: F(v) = resistance(v), the highest such v;   gear: v = n_max C (1 − s)/i;   the lower of the two in each gear, the highest of all gears
/// beyond the torque curve: v ≤ n_redline C (1 − s)/i;   where power falls at its end: resistance(v) · v ≤ P_end a η
/// </code>
/// <para>Uncertainty of a power-limited speed: u(reserve) over the slope of the reserve there (implicit function, first order).</para>
/// <para>Still air, level road, standard day at the vehicle's altitude.</para>
/// </remarks>
public sealed record TopSpeed(Measured Speed, DriveStep Step, TopSpeedLimit Limit, Measured? Most)
{
    private const int ScanSteps = 100;
    private const int Halvings = 60;
    private const double Rounding = 1e-9;

    /// <summary>Where it lies for all that is known, m/s: half way between what it reaches and what it cannot exceed, rectangular; the former where the latter is not known.</summary>
    public Measured Likely => Limit == TopSpeedLimit.Unknown && Most is { } most
        ? ((Speed + most) * 0.5) + Measured.From(0, Input.Rectangular(Spoken("torque beyond the curve"), (most.Value - Speed.Value) / 2, new Evidence(Spoken("torque beyond the curve"), _ => TorqueBeyond)))
        : Speed;

    /// <summary>Gears that nobody told, in which it may be faster; null where all are known.</summary>
    public UntoldGears? Untold { get; private init; }

    /// <summary>What to enter where the limit is not known.</summary>
    public string ToKnow => Untold?.Cure ?? TorqueBeyond;

    /// <summary>The same where it is the torque.</summary>
    public static string TorqueBeyond => Spoken("enter the engine's torque up to its redline");

    /// <summary>Null where no gear holds any speed the torque curve reaches.</summary>
    public static TopSpeed? Of(Pull pull)
    {
        var gears = pull.Steps.Select(step => In(pull, step)).OfType<TopSpeed>().ToList();
        if (gears.MaxBy(top => top.Speed.Value) is not { } fastest) return null;

        if (pull.Driveline.Transmission!.Untold is { } untold) return fastest with { Limit = TopSpeedLimit.Unknown, Most = null, Untold = untold };

        // A gear whose end is not known may still overtake the fastest.
        var most = gears.Exists(top => top.Most is null) ? null : gears.MaxBy(top => top.Most!.Value)!.Most;
        return most?.Value <= fastest.Speed.Value * (1 + Rounding) ? fastest : fastest with { Limit = TopSpeedLimit.Unknown, Most = most };
    }

    /// <summary>The same in one gear.</summary>
    public static TopSpeed? In(Pull pull, DriveStep step)
    {
        var fastest = pull.RoadSpeed(step, pull.HighestEngineSpeed);
        var (slowest, end) = (pull.RoadSpeed(step, pull.Torque.From).Value, fastest.Value);
        var surplus = pull.NominalReserve(step);
        if (surplus(end) >= 0)
            return pull.EndsAtRedline ? new(fastest, step, TopSpeedLimit.Gear, fastest) : new(fastest, step, TopSpeedLimit.Unknown, BeyondTheCurve(pull, step));

        var (holds, fails) = (double.NaN, end);
        for (var k = 1; k <= ScanSteps && double.IsNaN(holds); k++)
        {
            var v = end - ((end - slowest) * k / ScanSteps);
            if (surplus(v) >= 0) holds = v;
            else fails = v;
        }

        if (double.IsNaN(holds)) return null;
        for (var k = 0; k < Halvings; k++)
        {
            var middle = (holds + fails) / 2;
            if (surplus(middle) >= 0) holds = middle;
            else fails = middle;
        }

        var (low, high) = (Math.Max(slowest, holds * (1 - 1e-5)), Math.Min(end, holds * (1 + 1e-5)));
        var slope = (surplus(high) - surplus(low)) / (high - low);
        var root = Measured.Unknown(holds);
        var reached = pull.Reserve(step, root)!.SolvedFor(root, slope);
        return new(reached, step, TopSpeedLimit.Power, reached);
    }

    /// <summary>The speed, m/s, that peak power would reach on the level through the least losses of any gear, were its ratio free.</summary>
    public static Measured ByPeakPower(Pull pull) => pull.Steps.Select(step => ByPower(pull, step, pull.Torque.PeakPower)).MaxBy(v => v.Value)!;

    private static Measured? BeyondTheCurve(Pull pull, DriveStep step)
    {
        var byRedline = pull.Driveline.Engine!.Redline is { } redline ? pull.RoadSpeed(step, redline.Value) : null;
        var byPower = pull.Torque.EndsPastItsPowerPeak ? ByPower(pull, step, pull.Torque.PowerAtEnd) : null;
        return new[] { byRedline, byPower }.OfType<Measured>().MinBy(v => v.Value);
    }

    /// <remarks><code>P a η = resistance(v) · v</code> The left side does not depend on the ratio.</remarks>
    private static Measured ByPower(Pull pull, DriveStep step, Measured atEngine)
    {
        var power = pull.AtWheels(step, atEngine);
        var road = pull.Resistance.Curve;
        double Left(double v) => power.Value - road.Power(v);

        var (holds, fails) = (0.0, 1.0);
        while (Left(fails) > 0) fails *= 2;
        for (var k = 0; k < Halvings; k++)
        {
            var middle = (holds + fails) / 2;
            if (Left(middle) > 0) holds = middle;
            else fails = middle;
        }

        // ∂(R v)/∂v = R + v ∂R/∂v, and only drag grows with v.
        var slope = pull.Resistance.At(holds).Value + (2 * pull.Resistance.Drag(holds).Value);
        var root = Measured.Unknown(holds);
        return (power - (pull.Resistance.At(root) * root)).SolvedFor(root, -slope);
    }
}
