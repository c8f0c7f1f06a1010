using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Options;

/// <summary>All that the search needs of the tyres, one array a quantity, padded to whole vectors.</summary>
internal sealed class TyreColumns
{
    /// <param name="driveline">What stays.</param>
    /// <param name="goals">The wishes.</param>
    /// <param name="parts">Tyres of known circumference.</param>
    /// <param name="width">How many a vector holds.</param>
    /// <param name="stepsPerLog">How many steps of a pull curve a factor of e is.</param>
    /// <param name="brought">What comes with each of the tyres; nothing for null.</param>
    public TyreColumns(Driveline driveline, OwnersGoals goals, CandidateParts parts, int width, double stepsPerLog = 0, PartBrings[]? brought = null)
    {
        Count = parts.Tyres.Count;
        var padded = (Count + width - 1) / width * width;
        (Turns, Spread, Clash, Open, Watch) = (new double[padded], new double[padded], new double[padded], new double[padded], new double[padded]);
        (Cost, Changes, PullSteps) = (new double[padded], new double[padded], new double[padded]);
        OpenLooksApart = new double[padded];
        LeastFreedom = double.PositiveInfinity;
        for (var k = 0; k < Count; k++)
        {
            var candidate = parts.Tyres[k];
            var fitted = driveline with { Tyres = candidate.Part };
            var circumference = fitted.DrivingTyres!.RollingCircumference!.Value;
            Turns[k] = 1 / circumference.Value;
            Spread[k] = circumference.RelativeUncertainty * circumference.RelativeUncertainty;
            LeastFreedom = Math.Min(LeastFreedom, circumference.DegreesOfFreedom);
            var brings = brought?[k] ?? default;
            var counts = VerdictCounts.Of(SeparableChecks.OfTyres.SelectMany(check => check.Look(fitted, goals))) + brings.Counts;
            (Clash[k], OpenLooksApart[k], Watch[k]) = (counts.Clash, counts.Open, counts.Watch);
            Open[k] = counts.Open + (brings.IsUnlooked ? 1 : 0);
            (Cost[k], Changes[k], PullSteps[k]) = (candidate.Cost(parts.Currency), candidate.Changes, stepsPerLog * Math.Log(Turns[k]));
        }

        (LeastPullSteps, MostPullSteps) = (PullSteps.Take(Count).DefaultIfEmpty().Min(), PullSteps.Take(Count).DefaultIfEmpty().Max());
    }

    public int Count { get; }

    /// <summary>Turns a metre.</summary>
    public double[] Turns { get; }

    /// <summary>Relative variance of the circumference.</summary>
    public double[] Spread { get; }

    public double[] Clash { get; }

    public double[] Open { get; }

    /// <summary>The same beside parts that nobody has looked at either: that is one finding.</summary>
    public double[] OpenLooksApart { get; }

    public double[] Watch { get; }

    public double[] Cost { get; }

    public double[] Changes { get; }

    /// <summary>By how many steps the tyres move an axle along a pull curve.</summary>
    public double[] PullSteps { get; }

    public double LeastPullSteps { get; }

    public double MostPullSteps { get; }

    /// <summary>The fewest degrees of freedom of any circumference.</summary>
    public double LeastFreedom { get; }
}
