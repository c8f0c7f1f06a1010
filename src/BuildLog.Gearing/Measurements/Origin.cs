namespace BuildLog.Gearing.Measurements;

/// <summary>How a value came about, so that it can be computed again from drawn inputs.</summary>
/// <param name="Operation">What was done.</param>
/// <param name="Left">What it was done to; null for a value that was given.</param>
/// <param name="Right">The second operand of the four that have one.</param>
/// <param name="Function">Only for <see cref="Operation.Function"/>.</param>
internal readonly record struct Origin(Operation Operation, Measured? Left = null, Measured? Right = null, Func<double, double>? Function = null);

internal enum Operation
{
    /// <summary>Value + Σ cᵢ δᵢ, straight in its inputs; exact without any.</summary>
    Given,
    Sum,
    Difference,
    Product,
    Quotient,
    Function,

    /// <summary>The unknown of an equation, at its best value.</summary>
    Unknown,

    /// <summary>The value of the right operand, an unknown, at which the left is zero.</summary>
    Root,
}
