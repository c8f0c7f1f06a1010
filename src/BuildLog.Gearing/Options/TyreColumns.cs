using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Options;

/// <summary>All that the search needs of the tyres, one array a quantity, padded to whole vectors.</summary>
internal sealed class TyreColumns
{
    public TyreColumns(Driveline driveline, OwnersGoals goals, CandidateParts parts, int width)
    {
        Count = parts.Tyres.Count;
        var padded = (Count + width - 1) / width * width;
        (Turns, Spread, Clash, Open, Watch) = (new double[padded], new double[padded], new double[padded], new double[padded], new double[padded]);
        (Cost, Changes) = (new double[padded], new double[padded]);
        LeastFreedom = double.PositiveInfinity;
        for (var k = 0; k < Count; k++)
        {
            var candidate = parts.Tyres[k];
            var fitted = driveline with { Tyres = candidate.Part };
            var circumference = fitted.DrivingTyres!.RollingCircumference!.Value;
            Turns[k] = 1 / circumference.Value;
            Spread[k] = circumference.RelativeUncertainty * circumference.RelativeUncertainty;
            LeastFreedom = Math.Min(LeastFreedom, circumference.DegreesOfFreedom);
            var counts = VerdictCounts.Of(SeparableChecks.OfTyres.SelectMany(check => check.Look(fitted, goals)));
            (Clash[k], Open[k], Watch[k]) = (counts.Clash, counts.Open, counts.Watch);
            (Cost[k], Changes[k]) = (candidate.Cost(parts.Currency), candidate.Changes);
        }
    }

    public int Count { get; }

    /// <summary>Turns a metre.</summary>
    public double[] Turns { get; }

    /// <summary>Relative variance of the circumference.</summary>
    public double[] Spread { get; }

    public double[] Clash { get; }

    public double[] Open { get; }

    public double[] Watch { get; }

    public double[] Cost { get; }

    public double[] Changes { get; }

    /// <summary>The fewest degrees of freedom of any circumference.</summary>
    public double LeastFreedom { get; }
}
