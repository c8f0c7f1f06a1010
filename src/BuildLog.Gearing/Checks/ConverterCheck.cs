using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>A converter that does not lock cruises above its stall speed.</summary>
/// <remarks>
/// <code>n ≥ n_stall;   n = locked engine speed/(1 − s)</code>
/// <para>Below it the converter slips on, and the oil gets hot. Says nothing for a clutch, a converter that locks, or without a cruise goal.</para>
/// <para>Limit: common practice, it warns and never clashes. Slip s: see <see cref="Engines.Converter"/>.</para>
/// </remarks>
internal sealed class ConverterCheck : ICheck
{
    private static string Practice => Spoken("common practice: cruise above the stall speed");

    public string Id => "converter-stall";

    public string Title => Spoken("Converter stall against cruise");

    public IEnumerable<Finding> Look(Driveline driveline, OwnersGoals goals)
    {
        if (driveline.Transmission?.Converter is not { LocksUp: false } converter) yield break;

        var rpm = Units.RevolutionPerMinute;
        Position[] between = [Position.Transmission, driveline.DrivingPosition, Position.Tyres];
        foreach (var goal in goals.Cruise)
        {
            if (CruiseCheck.EngineSpeed(driveline, goal) is not { } n) continue;
            if (converter.StallSpeed is not { } known)
            {
                yield return this.Open(
                    between, Spoken("Whether the converter slips on at the cruise"),
                    [new(Spoken("its stall speed is not known"), Spoken("read the stall speed from the converter's data sheet"))], rpm, goal.Wanted, Practice);
                continue;
            }

            var stall = known.Value;
            var wanted = Window.AtLeast(stall.Value);
            yield return this.Judged(new(
                between, n - (stall - stall.Value), rpm, wanted,
                $"At {goal.Speed.InWords} the engine turns {Said.Number(n, rpm)}, slip included; the converter stalls at {Rounded.Value(stall, rpm)} and does not lock.",
                Practice)
            {
                LimitIsVerified = false,
                Cures = [Spoken("a gearbox whose converter locks"), Spoken($"a converter that stalls at {Math.Floor((rpm.FromBase(n.Interval95.Low) - 1) / 50) * 50:0} rev/min or less")],
                Windows = CruiseCheck.Windows(driveline, goal with { Wanted = wanted }),
            });
        }
    }
}
