namespace BuildLog.Sheet.Charts;

/// <summary>An axis that reaches from one value to another in round steps; zero is on it if it lies between.</summary>
internal sealed record AxisSpan(double Low, double Step, int Steps)
{
    public double High => Low + Step * Steps;

    public IEnumerable<double> Ticks => Enumerable.Range(0, Steps + 1).Select(i => Low + i * Step);

    public static AxisSpan Over(double low, double high, int mostSteps)
    {
        // The round step of the length may need one more at either end.
        var step = AxisScale.Reaching(high - low, Math.Max(1, mostSteps - 1)).Step;
        var from = Math.Floor(low / step + 1e-9);
        return new AxisSpan(from * step, step, (int)(Math.Ceiling(high / step - 1e-9) - from));
    }

    /// <summary>How far along the axis a value is, from 0 to 1.</summary>
    public double Share(double value) => (value - Low) / (High - Low);
}
