using System.Runtime.CompilerServices;
using BuildLog.Gearing.Goals;

namespace BuildLog.Gearing.Quantities;

/// <summary>Something that can be said in the units a person reads.</summary>
public interface ISaid
{
    /// <param name="shown">The unit to say for the one it was worded in.</param>
    string In(Func<Unit, Unit> shown);
}

/// <summary>A number with its unit, rounded only when it is said.</summary>
internal sealed record SaidNumber(Unit Unit, Func<Unit, string> Words) : ISaid
{
    /// <summary>How it is said where it is judged against a window; null for a number that is said alike everywhere.</summary>
    public Func<Unit, Window, string>? Judged { get; init; }

    /// <summary>The same number, judged.</summary>
    public SaidNumber Against(Window wanted) => Judged is { } judged ? this with { Words = shown => judged(shown, wanted), Judged = null } : this;

    public string In(Func<Unit, Unit> shown) => Words(shown(Unit));

    public override string ToString() => Words(Unit);
}

/// <summary>A sentence written like any other text, whose numbers can still be said in other units, in the language that is spoken then.</summary>
[InterpolatedStringHandler]
public sealed class Sentence : ISaid
{
    private readonly List<Part> parts;

    /// <summary>Called by the compiler where an interpolated text is given.</summary>
    public Sentence(int literalLength, int formattedCount) => parts = new(2 * formattedCount + Math.Min(literalLength, 1));

    private Sentence(List<Part> parts) => this.parts = parts;

    private Sentence(string text) => parts = [new(text, null, IsValue: true)];

    /// <summary>A text without numbers, the same in all units; in the language it was said in.</summary>
    public static implicit operator Sentence(string text) => new(text);

    /// <summary>Called by the compiler: a piece that is the same in all units.</summary>
    public void AppendLiteral(string text) => parts.Add(new(text, null, IsValue: false));

    /// <summary>Called by the compiler: a number that knows its unit is kept as one, anything else as text.</summary>
    public void AppendFormatted<T>(T value)
        => parts.Add(value is ISaid said ? new("", said, IsValue: true) : new(string.Create(Language.Spoken.Culture, $"{value}"), null, IsValue: true));

    /// <summary>Called by the compiler: a value in a fixed format, the same in all units.</summary>
    public void AppendFormatted<T>(T value, string? format) where T : IFormattable
        => parts.Add(new(value.ToString(format, Language.Spoken.Culture), null, IsValue: true));

    /// <summary>The sentence with each number in the unit that is to be shown for its own.</summary>
    public string In(Func<Unit, Unit> shown)
    {
        var language = Language.Spoken;
        if (language.IsWritten) return string.Concat(parts.Select(part => part.In(shown)));

        var template = new Template(parts.Count);
        foreach (var part in parts)
        {
            if (part.IsValue) template.AddValue(part.In(shown));
            else template.Add(part.Text);
        }

        return template.In(language);
    }

    /// <summary>The same sentence of something judged: no number of that kind seems to be on another side of a limit than it is.</summary>
    /// <param name="kind">What is judged.</param>
    /// <param name="wanted">The limits, in base units.</param>
    internal Sentence Judged(Kind kind, Window wanted)
        => new([.. parts.Select(part => part.Said switch
        {
            SaidNumber number when number.Unit.Kind == kind => part with { Said = number.Against(wanted) },
            Sentence clause => part with { Said = clause.Judged(kind, wanted) },
            _ => part,
        })]);

    /// <summary>In the units it was worded in.</summary>
    public override string ToString() => In(unit => unit);

    // A value has a place in the text, {0}; the rest is the text.
    private readonly record struct Part(string Text, ISaid? Said, bool IsValue)
    {
        public string In(Func<Unit, Unit> shown) => Said?.In(shown) ?? Text;
    }
}
