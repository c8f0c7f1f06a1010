namespace BuildLog.Gearing.Measurements;

/// <summary>A value that remembers how sensitive it is to each independent input, so that inputs in common cancel where they should.</summary>
/// <remarks>
/// <para>Unit: SI, or as the member that holds it says; ratios have unit one.</para>
/// <code>u² = Σ (cᵢ uᵢ)²        ν_eff = u⁴ / Σ ((cᵢ uᵢ)⁴ / νᵢ)        interval = y ± t₀.₉₇₅(ν_eff) · u</code>
/// <para>cᵢ sensitivity ∂y/∂xᵢ; uᵢ standard uncertainty of input i; νᵢ its degrees of freedom.</para>
/// <para>
/// First order: right where the formula is nearly straight over ±2u. Ratios known to a few per cent are. A value also remembers the operations that
/// made it, so that <see cref="MonteCarlo"/> can go them again and say whether it was.
/// </para>
/// <para>Source: JCGM 100:2008, 5.1.2 (propagation), G.4.1 (Welch–Satterthwaite), G.3 (interval).</para>
/// </remarks>
public sealed class Measured
{
    /// <summary>Rounding of a few dozen operations in doubles, with room.</summary>
    private const double Rounding = 1e-14;

    private static readonly Measured Zero = new(0, [], default);

    private readonly Part[] parts;

    private Measured(double value, Part[] parts, Origin origin)
    {
        if (!double.IsFinite(value)) throw new ArgumentOutOfRangeException(nameof(value), value, "A value is finite.");
        Value = value;
        this.parts = parts;
        Origin = origin;
    }

    /// <summary>How strongly one input moves the value.</summary>
    private readonly record struct Part(Input Input, double Sensitivity)
    {
        public double Contribution => Sensitivity * Input.StandardUncertainty;
    }

    /// <summary>The best value, in its unit.</summary>
    public double Value { get; }

    internal Origin Origin { get; }

    /// <summary>The inputs of a value that was given, each with its sensitivity.</summary>
    internal IEnumerable<(Input Input, double Sensitivity)> Inputs => parts.Select(part => (part.Input, part.Sensitivity));

    /// <summary>Combined standard uncertainty, in the unit of the value.</summary>
    public double StandardUncertainty => Math.Sqrt(Variance);

    /// <summary>u / |value|; zero for an exact zero.</summary>
    public double RelativeUncertainty => Variance == 0 ? 0 : StandardUncertainty / Math.Abs(Value);

    /// <summary>ν_eff by Welch and Satterthwaite; infinite where no input's is finite.</summary>
    public double DegreesOfFreedom
    {
        get
        {
            double spread = 0;
            foreach (var part in parts) spread += Math.Pow(part.Contribution, 4) / part.Input.DegreesOfFreedom;
            return spread == 0 ? double.PositiveInfinity : Variance * Variance / spread;
        }
    }

    /// <summary>The coverage factor t(0.975, ν_eff).</summary>
    public double CoverageFactor => StudentT.Factor95(DegreesOfFreedom);

    /// <summary>Half the width of the 95 % interval.</summary>
    public double Expanded95 => Variance == 0 ? 0 : CoverageFactor * StandardUncertainty;

    /// <summary>y ± t₀.₉₇₅(ν_eff) · u, in the unit of the value.</summary>
    public Interval Interval95
    {
        get
        {
            var half = Expanded95;
            return new(Value - half, Value + half);
        }
    }

    /// <summary>Whether it has no uncertainty: teeth, a definition, a choice.</summary>
    public bool IsExact => Variance == 0;

    // Exact at first order is not yet constant: x² at x = 0.
    private bool IsConstant => parts.Length == 0 && Origin.Operation == Operation.Given;

    private double Variance
    {
        get
        {
            double sum = 0;
            foreach (var part in parts) sum += part.Contribution * part.Contribution;
            return sum;
        }
    }

    /// <summary>A value without uncertainty.</summary>
    public static Measured Exact(double value) => new(value, [], default);

    /// <summary>A value whose error is one unit of the input for one unit of the value.</summary>
    public static Measured From(double value, Input input) => new(value, [new Part(input, 1)], default);

    /// <summary>A value with several independent inputs, each with its sensitivity.</summary>
    public static Measured From(double value, params ReadOnlySpan<(Input Input, double Sensitivity)> inputs)
    {
        var sum = Exact(value);
        foreach (var (input, sensitivity) in inputs) sum += (From(0, input) * sensitivity);
        return sum;
    }

    /// <inheritdoc cref="Exact"/>
    public static implicit operator Measured(double exact) => Exact(exact);

    /// <summary>The sum; what both share adds up.</summary>
    public static Measured operator +(Measured a, Measured b) => Combine(a.Value + b.Value, a, 1, b, 1, Operation.Sum);

    /// <summary>The difference; what both share cancels.</summary>
    public static Measured operator -(Measured a, Measured b) => Combine(a.Value - b.Value, a, 1, b, -1, Operation.Difference);

    /// <summary>The same value with the other sign, sharing all its inputs.</summary>
    public static Measured operator -(Measured a) => Scale(-a.Value, a, -1, new(Operation.Difference, Zero, a));

    /// <summary>The product, first order.</summary>
    public static Measured operator *(Measured a, Measured b) => Combine(a.Value * b.Value, a, b.Value, b, a.Value, Operation.Product);

    /// <summary>The quotient, first order; what scales both alike cancels.</summary>
    public static Measured operator /(Measured a, Measured b)
        => Combine(a.Value / b.Value, a, 1 / b.Value, b, -a.Value / (b.Value * b.Value), Operation.Quotient);

    /// <summary>A function of one value, with its derivative there.</summary>
    public Measured Map(Func<double, double> function, double derivative)
        => Scale(function(Value), this, derivative, new(Operation.Function, this, null, function));

    /// <summary>The unknown of an equation, at the value that a search found for it; see <see cref="SolvedFor"/>.</summary>
    public static Measured Unknown(double root) => new(root, [], new(Operation.Unknown));

    /// <summary>This is an equation's left side, which is zero at the unknown's value: the unknown, moved by the inputs so that it stays zero.</summary>
    /// <param name="unknown">From <see cref="Unknown"/>; the left side was computed from it.</param>
    /// <param name="slope">∂(this)/∂unknown there.</param>
    /// <remarks><code>∂x/∂inputᵢ = −(∂F/∂inputᵢ)/(∂F/∂x)</code> First order; a <see cref="MonteCarlo"/> solves F(x) = 0 anew for each draw. Source: implicit function theorem.</remarks>
    public Measured SolvedFor(Measured unknown, double slope) => Scale(unknown.Value, this, -1 / slope, new(Operation.Root, this, unknown));

    /// <summary>The square root of a value above zero.</summary>
    public Measured SquareRoot() => Map(Math.Sqrt, 0.5 / Math.Sqrt(Value));

    /// <summary>Whether both can be right: the 95 % interval of their difference, in which what they share cancels, holds zero.</summary>
    public bool AgreesWith(Measured other) => (this - other).Interval95.Contains(0);

    /// <summary>What each input does to the value, the strongest first.</summary>
    public IReadOnlyList<BudgetLine> Budget()
    {
        var variance = Variance;
        return
        [
            .. parts
                .Where(part => part.Contribution != 0)
                .Select(part => new BudgetLine(part.Input, part.Sensitivity, Math.Abs(part.Contribution), part.Contribution * part.Contribution / variance))
                .OrderByDescending(line => line.Share),
        ];
    }

    /// <summary>∂value/∂input; zero where the value does not depend on it.</summary>
    public double SensitivityTo(Input input)
    {
        foreach (var part in parts)
        {
            if (part.Input == input) return part.Sensitivity;
        }

        return 0;
    }

    /// <summary>Covariance of two values, through the inputs they share (JCGM 100:2008, F.1.2.3).</summary>
    public static double Covariance(Measured a, Measured b)
        => a.parts.Sum(part => part.Contribution * b.SensitivityTo(part.Input) * part.Input.StandardUncertainty);

    /// <summary>Six figures and u, for a debugger; people get <see cref="Quantities.Rounded"/>.</summary>
    public override string ToString() => FormattableString.Invariant($"{Value:G6} (u {StandardUncertainty:G2})");

    private static Measured Scale(double value, Measured a, double da, Origin origin)
        => new(value, Array.ConvertAll(a.parts, part => part with { Sensitivity = part.Sensitivity * da }), origin);

    // Both lists are in the order their inputs were made, so one walk merges them and adds what is shared.
    private static Measured Combine(double value, Measured a, double da, Measured b, double db, Operation operation)
    {
        var origin = a.IsConstant && b.IsConstant ? default : new Origin(operation, a, b);
        if (b.parts.Length == 0) return Scale(value, a, da, origin);
        if (a.parts.Length == 0) return Scale(value, b, db, origin);

        var merged = new Part[a.parts.Length + b.parts.Length];
        int i = 0, j = 0, count = 0;
        while (i < a.parts.Length || j < b.parts.Length)
        {
            var order = i == a.parts.Length ? 1 : j == b.parts.Length ? -1 : a.parts[i].Input.Order.CompareTo(b.parts[j].Input.Order);
            var input = order <= 0 ? a.parts[i].Input : b.parts[j].Input;
            var (fromA, fromB) = (order <= 0 ? da * a.parts[i++].Sensitivity : 0, order >= 0 ? db * b.parts[j++].Sensitivity : 0);

            // What cancels but for rounding is gone: a shift drop depends on the tyre by nothing, not by 1e-18.
            var sensitivity = fromA + fromB;
            if (order == 0 && Math.Abs(sensitivity) <= Rounding * (Math.Abs(fromA) + Math.Abs(fromB))) continue;
            merged[count++] = new Part(input, sensitivity);
        }

        if (count < merged.Length) Array.Resize(ref merged, count);
        return new(value, merged, origin);
    }
}
