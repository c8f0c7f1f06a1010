namespace BuildLog.Gearing.Measurements;

/// <summary>One line of an uncertainty budget (JCGM 100:2008, Table H.1 has the form).</summary>
/// <param name="Input">The cause.</param>
/// <param name="Sensitivity">∂value/∂input.</param>
/// <param name="Contribution">|sensitivity| · u(input), in the unit of the value.</param>
/// <param name="Share">Its part of the variance; the shares of a budget sum to one.</param>
public sealed record BudgetLine(Input Input, double Sensitivity, double Contribution, double Share);
