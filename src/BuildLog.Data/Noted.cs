using BuildLog.Data.Specs;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Data;

/// <summary>A number noted down about a part: its value, the text as typed, and how it is known.</summary>
/// <remarks>The text is what counts; the value beside it is for queries and follows from the text.</remarks>
public sealed record Noted
{
    internal Noted(double si, string unit, string text, Source source) => (Si, Unit, Text, Source) = (si, unit, text, source);

    /// <summary>In the base unit of its kind.</summary>
    public double Si { get; private init; }

    /// <summary>The symbol of the unit that was typed; empty for a ratio.</summary>
    public string Unit { get; private init; }

    public string Text { get; private init; }

    public Source Source { get; private init; }

    /// <summary>As typed, for whoever reads it; see <see cref="AsWritten"/>.</summary>
    public string InWords => AsWritten.InWords(Text, Gearing.Quantities.Units.Spelt(Unit) ?? Gearing.Quantities.Units.One);

    /// <exception cref="RefusedException">The text is no such ratio.</exception>
    public static Noted Ratio(string text, RatioRange range, Source source) => From(range.Read(text), source);

    /// <summary>An overdrive's ratio, or the share it is sold by.</summary>
    /// <exception cref="RefusedException">The text is no overdrive.</exception>
    public static Noted Overdrive(string text, Source source) => From(OverdriveUnit.Read(text), source);

    /// <summary>A transfer case's low range: its ratio or its teeth.</summary>
    /// <exception cref="RefusedException">The text is no transfer case.</exception>
    public static Noted TransferLow(string text, Source source) => From(TransferCaseLow.Read(text), source);

    /// <exception cref="RefusedException">The text is no length.</exception>
    public static Noted Length(string text, Source source, Unit? unitIfNone = null) => From(QuantityText.Read(text, Kind.Length, unitIfNone), source);

    /// <exception cref="RefusedException">The text is no engine speed.</exception>
    public static Noted EngineSpeed(string text, Source source) => From(CruiseGoal.ReadEngineSpeed(text), source);

    /// <exception cref="RefusedException">The text is no road speed.</exception>
    public static Noted Speed(string text, Source source) => From(CruiseGoal.ReadSpeed(text), source);

    /// <exception cref="RefusedException">The text is no torque.</exception>
    public static Noted Torque(string text, Source source) => From(QuantityText.ReadPlain(text, Kind.Torque, Units.NewtonMetre), source);

    /// <summary>What belongs under a heading of the spec sheet.</summary>
    /// <exception cref="RefusedException">The text cannot be that.</exception>
    public static Noted Of(Spec spec, string text, Source source) => Of(spec.Line(), text, source);

    /// <summary>The same of a number that stands with one piece of a shaft.</summary>
    /// <exception cref="RefusedException">The text cannot be that.</exception>
    public static Noted Of(SpecLine line, string text, Source source) => From(line.Read(text), source);

    public override string ToString() => Text;

    private static Noted From(Parsed<QuotedRatio> parsed, Source source)
    {
        var quoted = parsed.OrRefuse();
        return new(quoted.Ratio, Gearing.Quantities.Units.One.Symbol, quoted.Text, source);
    }

    private static Noted From(Parsed<Typed> parsed, Source source)
    {
        var typed = parsed.OrRefuse();
        return new(typed.Value, typed.Unit.Symbol, typed.Text, source);
    }
}
