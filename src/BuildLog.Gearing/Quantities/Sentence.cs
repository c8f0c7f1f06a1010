using System.Globalization;
using System.Runtime.CompilerServices;

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
    public string In(Func<Unit, Unit> shown) => Words(shown(Unit));

    public override string ToString() => Words(Unit);
}

/// <summary>A sentence written like any other text, whose numbers can still be said in other units.</summary>
[InterpolatedStringHandler]
public sealed class Sentence : ISaid
{
    private readonly List<(string Text, ISaid? Said)> parts;

    /// <summary>Called by the compiler where an interpolated text is given.</summary>
    public Sentence(int literalLength, int formattedCount) => parts = new(2 * formattedCount + Math.Min(literalLength, 1));

    private Sentence(string text) => parts = [(text, null)];

    /// <summary>A text without numbers, the same in all units.</summary>
    public static implicit operator Sentence(string text) => new(text);

    /// <summary>Called by the compiler: a piece that is the same in all units.</summary>
    public void AppendLiteral(string text) => parts.Add((text, null));

    /// <summary>Called by the compiler: a number that knows its unit is kept as one, anything else as text, whatever the machine's culture.</summary>
    public void AppendFormatted<T>(T value)
        => parts.Add(value is ISaid said ? ("", said) : (string.Create(CultureInfo.InvariantCulture, $"{value}"), null));

    /// <summary>Called by the compiler: a value in a fixed format, the same in all units.</summary>
    public void AppendFormatted<T>(T value, string? format) where T : IFormattable
        => AppendLiteral(value.ToString(format, CultureInfo.InvariantCulture));

    /// <summary>The sentence with each number in the unit that is to be shown for its own.</summary>
    public string In(Func<Unit, Unit> shown) => string.Concat(parts.Select(part => part.Said?.In(shown) ?? part.Text));

    /// <summary>In the units it was worded in.</summary>
    public override string ToString() => In(unit => unit);
}
