using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Quantities;

/// <summary>A quantity as somebody typed it: what it is in base units, the unit that was used, and the very text.</summary>
/// <param name="Value">In the base unit of the kind.</param>
/// <param name="Unit">The first unit that was typed, or the one that was taken for granted.</param>
/// <param name="Text">The text as typed, trimmed.</param>
/// <param name="StandardUncertainty">From a typed <c>± …</c> (a 95 % half-width) or <c>u=…</c>; zero if none was typed.</param>
public sealed record Typed(double Value, Unit Unit, string Text, double StandardUncertainty = 0)
{
    /// <summary>No unit was typed: the usual one was taken for granted, which has to be said.</summary>
    public bool IsBare { get; init; }

    /// <summary>The value in the unit that was typed.</summary>
    public double InUnit => Unit.FromBase(Value);

    /// <summary>The value with its typed ± as the one input, named so in a budget; exact where none was typed.</summary>
    public Measured ToMeasured(string name)
        => StandardUncertainty == 0
            ? Value
            : Measured.From(Value, new Input(name, StandardUncertainty, new Evidence(name, _ => Spoken($"measure the {name} more closely than typed ({Text})"))));
}
