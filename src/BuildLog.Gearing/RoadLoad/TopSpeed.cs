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
}

/// <summary>How fast it goes on the level, in which gear, and what ends it.</summary>
/// <param name="Speed">m/s.</param>
/// <param name="Step">The gear it is reached in.</param>
/// <param name="Limit">What ends it.</param>
/// <remarks>
/// <code>power: F(v) = resistance(v), the highest such v;   gear: v = n_max C (1 − s)/i;   the lower of the two in each gear, the highest of all gears</code>
/// <para>Uncertainty of a power-limited speed: u(reserve) over the slope of the reserve there (implicit function, first order).</para>
/// <para>Still air, level road, standard day at the vehicle's altitude.</para>
/// </remarks>
public sealed record TopSpeed(Measured Speed, DriveStep Step, TopSpeedLimit Limit)
{
    private const int ScanSteps = 100;
    private const int Halvings = 60;

    /// <summary>Null where no gear holds any speed the torque curve reaches.</summary>
    public static TopSpeed? Of(Pull pull) => pull.Steps.Select(step => In(pull, step)).OfType<TopSpeed>().MaxBy(top => top.Speed.Value);

    /// <summary>The same in one gear.</summary>
    public static TopSpeed? In(Pull pull, DriveStep step)
    {
        var fastest = pull.RoadSpeed(step, pull.HighestEngineSpeed);
        var slowest = pull.RoadSpeed(step, pull.Torque.From).Value;

        // Rounding must not carry the very end past the curve.
        var end = fastest.Value * (1 - 1e-12);
        var surplus = pull.NominalReserve(step);
        if (surplus(end) >= 0) return new(fastest, step, TopSpeedLimit.Gear);

        var (holds, fails) = (double.NaN, end);
        for (var k = 1; k <= ScanSteps && double.IsNaN(holds); k++)
        {
            var v = end - ((end - (slowest * (1 + 1e-12))) * k / ScanSteps);
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

        var (low, high) = (Math.Max(slowest * (1 + 1e-12), holds * (1 - 1e-5)), Math.Min(end, holds * (1 + 1e-5)));
        var slope = (surplus(high) - surplus(low)) / (high - low);
        var reserve = pull.Reserve(step, holds)!;
        return new(reserve.Map(holds, -1 / slope), step, TopSpeedLimit.Power);
    }

    /// <summary>The speed, m/s, that peak power would reach on the level through this gear's losses, were its ratio free.</summary>
    /// <remarks><code>P_max a η = resistance(v) · v</code> The left side does not depend on the ratio.</remarks>
    public static Measured ByPeakPower(Pull pull, DriveStep step)
    {
        var power = pull.PeakPowerAtWheels(step);
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
        return (power - (pull.Resistance.At(holds) * holds)).Map(holds, 1 / slope);
    }
}
