namespace BuildLog.Sheet.Charts;

/// <summary>An axis from zero in round steps of 1, 2 or 5 times a power of ten.</summary>
internal sealed record AxisScale(double Step, int Steps)
{
    public double Max => Step * Steps;

    public IEnumerable<double> Ticks => Enumerable.Range(0, Steps + 1).Select(i => i * Step);

    /// <summary>The finest scale that reaches the value in no more steps than asked.</summary>
    public static AxisScale Reaching(double value, int mostSteps)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(value / mostSteps)));
        double[] steps = [power, 2 * power, 5 * power, 10 * power];
        var step = Array.Find(steps, candidate => candidate * mostSteps >= value * (1 - 1e-9));
        return new AxisScale(step, (int)Math.Ceiling(value / step - 1e-9));
    }
}
