using BuildLog.Gearing.Drivelines;

namespace BuildLog.Gearing.Options;

/// <summary>The propshaft turns a metre that the axles and tyres of a search can make, in equal ratios from step to step.</summary>
internal sealed class PullRange
{
    private const double WidestStep = 0.005;
    private const int FewestSteps = 8;
    private const int MostSteps = 320;
    private const double Room = 1e-9;

    private readonly double lowest;

    /// <param name="parts">Axles and tyres of known numbers.</param>
    /// <param name="driving">The driving axle.</param>
    public PullRange(CandidateParts parts, Position driving)
    {
        var axles = parts.Axles.Select(axle => axle.Part!.Ratio!.Value).ToList();
        var tyres = parts.Tyres.Select(tyre => tyre.Part!.On(driving).RollingCircumference!.Value).ToList();
        lowest = Math.Log(axles.Min(axle => axle.Value) / tyres.Max(tyre => tyre.Value)) - Room;
        var width = Math.Log(axles.Max(axle => axle.Value) / tyres.Min(tyre => tyre.Value)) + Room - lowest;
        Steps = (int)Math.Clamp(Math.Ceiling(width / WidestStep), FewestSteps, MostSteps);
        PerLog = Steps / width;
        LeastSpread = Square(axles.Min(axle => axle.RelativeUncertainty)) + Square(tyres.Min(tyre => tyre.RelativeUncertainty));
        MostSpread = Square(axles.Max(axle => axle.RelativeUncertainty)) + Square(tyres.Max(tyre => tyre.RelativeUncertainty));
        LeastFreedom = Math.Min(axles.Min(axle => axle.DegreesOfFreedom), tyres.Min(tyre => tyre.DegreesOfFreedom));
    }

    public int Steps { get; }

    /// <summary>Steps for each factor of e.</summary>
    public double PerLog { get; }

    /// <summary>The least relative variance of any axle with any tyres.</summary>
    public double LeastSpread { get; }

    public double MostSpread { get; }

    /// <summary>The fewest degrees of freedom of any axle or tyres.</summary>
    public double LeastFreedom { get; }

    /// <summary>Turns a metre at the end of a step; 0 is the lowest of all.</summary>
    public double At(int step) => Math.Exp(lowest + (step / PerLog));

    /// <summary>Where an axle lies among the steps, as long as one turn of the wheel covers one metre; tyres move it by <see cref="PerLog"/> · ln(1/C).</summary>
    public double StepOf(double axle) => (Math.Log(axle) - lowest) * PerLog;

    private static double Square(double value) => value * value;
}
