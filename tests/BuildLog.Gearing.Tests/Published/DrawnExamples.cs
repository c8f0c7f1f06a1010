using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>JCGM 101:2008, clause 9: what first order cannot say, drawn.</summary>
internal static class DrawnExamples
{
    private const int Seed = 101;
    private const int Trials = 1_000_000;

    private static readonly Evidence Example = new("clause 9");

    // 9.2.3: four rectangular inputs of u = 1; 9.2.4: one of them of u = 10.
    public static PublishedSet Sums() => new("Sums of rectangular inputs, drawn", "JCGM 101:2008, 9.2.3 and 9.2.4", Standing.Read,
    [
        Figure.ToPlaces("9.2.3, u", 2.0, 1, Sum(1).StandardUncertainty),
        Within("9.2.3, half the interval", 3.88, Sum(1).Interval95.HalfWidth, 0.01),
        Figure.ToPlaces("9.2.4, u", 10.1, 1, Sum(10).StandardUncertainty),
    ]);

    public static PublishedSet UnevenSumFromMemory() => new("Sum of uneven rectangular inputs, drawn, half the interval", "JCGM 101:2008, 9.2.4", Standing.FromMemory,
    [
        Within("9.2.4, half the interval", 17.0, Sum(10).Interval95.HalfWidth, 0.05),
    ]);

    // 9.3: δm = (m_R + δm_R)(1 + (ρ_a − ρ_a0)(1/ρ_W − 1/ρ_R)) − m_nom, in mg; ρ_a0 = 1.2 kg/m³, m_nom = 100 g.
    public static PublishedSet Mass()
    {
        var mass = (Normal(100_000, 0.050) + Normal(1.234, 0.020))
            * (1 + ((Rectangular(1.20, 0.10) - 1.2) * ((1 / Rectangular(8000, 1000)) - (1 / Rectangular(8000, 50))))) - 100_000;
        var drawn = Drawn(mass);
        return new("Mass calibration, first order and drawn", "JCGM 101:2008, 9.3", Standing.Read,
        [
            Figure.ToPlaces("δm", 1.234, 3, mass.Value),
            Figure.ToPlaces("u, first order", 0.0539, 4, mass.StandardUncertainty),
            Within("u, second order, drawn", 0.075, drawn.StandardUncertainty, 0.001),
        ]);
    }

    // 9.4: Y = X1² + X2², u = 0.005, x2 = 0, in 1e-6; the estimate 2551 in print is the scatter of its own draws about 2550.
    public static PublishedSet ComparisonLoss() => new("Comparison loss, drawn", "JCGM 101:2008, 9.4", Standing.Read,
    [
        Within("x1 = 0, y", 50, Loss(0, 0).Mean, 1), Within("x1 = 0, u", 50, Loss(0, 0).StandardUncertainty, 1),
        Within("x1 = 0, r = 0.9, y", 50, Loss(0, 0.9).Mean, 1), Within("x1 = 0, r = 0.9, u", 67, Loss(0, 0.9).StandardUncertainty, 1),
        Within("x1 = 0.010, r = 0.9, u", 121, Loss(0.010, 0.9).StandardUncertainty, 1), Within("x1 = 0.050, r = 0.9, u", 505, Loss(0.050, 0.9).StandardUncertainty, 2),
    ]);

    public static PublishedSet ComparisonLossFromMemory() => new("Comparison loss, further estimates and shortest 95 % intervals", "JCGM 101:2008, 9.4", Standing.FromMemory,
    [
        Within("x1 = 0, low", 0, Loss(0, 0).Shortest95.Low, 0.5), Within("x1 = 0, high", 150, Loss(0, 0).Shortest95.High, 2),
        Within("x1 = 0.010, y", 150, Loss(0.010, 0).Mean, 1), Within("x1 = 0.010, u", 112, Loss(0.010, 0).StandardUncertainty, 1),
        Within("x1 = 0.010, low", 0, Loss(0.010, 0).Shortest95.Low, 0.5), Within("x1 = 0.010, high", 367, Loss(0.010, 0).Shortest95.High, 4),
        Within("x1 = 0.050, y", 2551, Loss(0.050, 0).Mean, 2), Within("x1 = 0.050, u", 502, Loss(0.050, 0).StandardUncertainty, 2),
        Within("x1 = 0.050, low", 1590, Loss(0.050, 0).Shortest95.Low, 25), Within("x1 = 0.050, high", 3543, Loss(0.050, 0).Shortest95.High, 25),
        Within("x1 = 0, r = 0.9, low", 0, Loss(0, 0.9).Shortest95.Low, 0.5), Within("x1 = 0, r = 0.9, high", 185, Loss(0, 0.9).Shortest95.High, 3),
        Within("x1 = 0.010, r = 0.9, y", 150, Loss(0.010, 0.9).Mean, 1),
        Within("x1 = 0.010, r = 0.9, low", 13, Loss(0.010, 0.9).Shortest95.Low, 1), Within("x1 = 0.010, r = 0.9, high", 398, Loss(0.010, 0.9).Shortest95.High, 5),
        Within("x1 = 0.050, r = 0.9, y", 2551, Loss(0.050, 0.9).Mean, 2),
        Within("x1 = 0.050, r = 0.9, low", 1628, Loss(0.050, 0.9).Shortest95.Low, 25), Within("x1 = 0.050, r = 0.9, high", 3555, Loss(0.050, 0.9).Shortest95.High, 25),
    ]);

    // 9.5: the end gauge of GUM H.1 by its whole formula, nm; arc sine for the bath's cycle, curvilinear trapezoids for δα and δθ.
    public static PublishedSet GaugeBlock()
    {
        const double nominal = 50_000_000;
        var standard = Few(50_000_623, 25, 18);
        var difference = Few(215, 6, 24) + Few(0, 4, 5) + Few(0, 7, 8);
        var alpha = Rectangular(11.5e-6, 2e-6);
        var cycle = Rectangular(0, 1).Map(phase => 0.5 * Math.Sin(Math.PI * phase), Math.PI / 2);
        var theta = Normal(-0.1, 0.2) + cycle;
        var length = (((standard * (1 + (alpha * (theta - Trapezoid(0.050, 0.025))))) + difference) / (1 + ((alpha + Trapezoid(1e-6, 0.1e-6)) * theta))) - nominal;
        var drawn = Drawn(length);
        return new("Gauge block, drawn", "JCGM 101:2008, 9.5", Standing.Read,
        [
            Within("δL", 838, drawn.Mean, 0.5),
            Within("u", 36, drawn.StandardUncertainty, 0.5),
        ]);
    }

    private static MonteCarlo Sum(double u)
        => Drawn(Rectangular(0, Math.Sqrt(3)) + Rectangular(0, Math.Sqrt(3)) + Rectangular(0, Math.Sqrt(3)) + Rectangular(0, u * Math.Sqrt(3)));

    private static readonly Dictionary<(double X1, double R), MonteCarlo> Losses = [];

    // A million draws a case, asked for each of its figures.
    private static MonteCarlo Loss(double x1, double r)
    {
        lock (Losses) return Losses.TryGetValue((x1, r), out var drawn) ? drawn : Losses[(x1, r)] = LossDrawn(x1, r);
    }

    private static MonteCarlo LossDrawn(double x1, double r)
    {
        var first = Normal(0, 0.005);
        var (one, two) = (first + x1, (first * r) + (Normal(0, 0.005) * Math.Sqrt(1 - (r * r))));
        return Drawn(((one * one) + (two * two)) * 1e6);
    }

    // 6.4.3.2: a = −h ± d at the lower end, its mirror image at the upper one, and anywhere between.
    private static Measured Trapezoid(double h, double d)
    {
        var half = Rectangular(h, d);
        return half * Rectangular(0, 1);
    }

    private static MonteCarlo Drawn(Measured value) => MonteCarlo.OfTrials(value, Seed, Trials)!;

    private static Measured Normal(double value, double u) => Measured.From(value, new Input("normal", u, Example));

    private static Measured Few(double value, double u, double degrees) => Measured.From(value, new Input("few readings", u, Example, degrees));

    private static Measured Rectangular(double value, double halfWidth) => Measured.From(value, Input.Rectangular("limits", halfWidth, Example));

    // Half a printed digit is finer than a million draws are.
    private static Figure Within(string name, double printed, double drawn, double tolerance) => new(name, printed, drawn, tolerance);
}
