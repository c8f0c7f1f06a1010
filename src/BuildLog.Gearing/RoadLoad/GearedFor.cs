using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.RoadLoad;

/// <summary>How much shorter or longer all gears together may be for the engine to hold a speed on the level in one of them.</summary>
/// <param name="Nominal">Factors on the overall ratio, with all numbers at their best values; an open side lies beyond what is looked at.</param>
/// <param name="Sure">The same with today's uncertainties; null where there is none.</param>
/// <remarks>
/// <code>n = f v i/(C (1 − s)) ≤ n_max,   f F(n) ≥ resistance(v)   in one gear at least</code>
/// <para>
/// Followed from the factor at which that gear turns the engine at its power peak, or as fast as it may: too short and the engine turns out, too long and it has
/// no power there. For sure with the 95 % of the reserve there to spare, and of the engine speed. Source: definition.
/// </para>
/// </remarks>
public sealed record GearedFor(Window Nominal, Window? Sure)
{
    private const double Most = 4;
    private const double Step = 1.02;
    private const int Halvings = 24;
    private const double Rounding = 1e-9;
    private const double JustBeyond = 1e-6;

    /// <param name="pull">The driveline.</param>
    /// <param name="speed">m/s.</param>
    /// <returns>Null where no gearing makes the engine strong enough.</returns>
    public static GearedFor? Of(Pull pull, double speed)
    {
        var peak = Math.Min(pull.Torque.MostPowerful.EngineSpeed, pull.HighestEngineSpeed.Value);
        var reserves = pull.Steps.Select(step => pull.NominalReserveGeared(step, speed)).ToList();
        bool Holds(double factor) => reserves.Exists(reserve => reserve(factor, 0) >= -Rounding);

        var best = pull.Steps.Select(step => (Step: step, Factor: peak / pull.EngineSpeed(step, speed).Value)).Where(at => Holds(at.Factor)).ToList();
        if (best.Count == 0) return null;

        var (step, factor) = best.MinBy(at => Math.Abs(Math.Log(at.Factor)));
        var spare = pull.Reserve(step with { Gear = step.Gear * (factor * (1 - Rounding)) }, speed)!.Expanded95;
        var turns = pull.EngineSpeed(step, speed) / pull.HighestEngineSpeed;
        var slack = turns.Expanded95 / turns.Value;
        var turnsOut = pull.Steps.Select(step => pull.HighestEngineSpeed.Value / pull.EngineSpeed(step, speed).Value).ToList();
        bool Surely(double f) => reserves.Exists(reserve => reserve(f, slack) >= spare - Rounding);

        var start = factor / (1 + slack);
        return new(Around(factor, Holds, turnsOut), Surely(start) ? Around(start, Surely, [.. turnsOut.Select(at => at / (1 + slack))]) : null);
    }

    private static Window Around(double factor, Func<double, bool> holds, IReadOnlyList<double> turnsOut) => new(End(factor, 1 / Step, holds, turnsOut), End(factor, Step, holds, turnsOut));

    // Where one gear has turned out and the next is not strong enough yet, a gap may lie within a step: just beyond each such place is looked too.
    private static double End(double from, double by, Func<double, bool> holds, IReadOnlyList<double> turnsOut)
    {
        var inside = from;
        while (holds(inside * by))
        {
            var (low, high) = (Math.Min(inside, inside * by), Math.Max(inside, inside * by));
            var gaps = turnsOut.Select(at => at * (1 + JustBeyond)).Where(at => at > low && at < high && !holds(at)).ToList();
            if (gaps.Count > 0) return Edge(inside, by > 1 ? gaps.Min() : gaps.Max(), holds);

            inside *= by;
            if (Math.Abs(Math.Log(inside)) > Math.Log(Most)) return by > 1 ? double.PositiveInfinity : double.NegativeInfinity;
        }

        return Edge(inside, inside * by, holds);
    }

    private static double Edge(double inside, double outside, Func<double, bool> holds)
    {
        for (var k = 0; k < Halvings; k++)
        {
            var middle = (inside + outside) / 2;
            if (holds(middle)) inside = middle;
            else outside = middle;
        }

        return inside;
    }
}
