using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>One mark on the floor: so far from the start line after so many turns of the wheel.</summary>
public sealed record RollReading
{
    /// <summary>What road tyres cover a turn, m; beyond is a slip of the pen.</summary>
    public const double Smallest = 0.8;

    /// <inheritdoc cref="Smallest"/>
    public const double Largest = 6;

    private const string Right = "3:6125mm";

    /// <param name="turns">Turns of the wheel, above zero.</param>
    /// <param name="distance">Metres from the start line.</param>
    /// <param name="text">The reading as typed.</param>
    /// <exception cref="RefusedException">Turns or a distance that no road tyre makes.</exception>
    public RollReading(double turns, double distance, string text)
    {
        if (Refuse(turns, distance, text) is { } refusal) throw new RefusedException(refusal);
        (Turns, Distance, Text) = (turns, distance, text);
    }

    /// <summary>Turns of the wheel.</summary>
    public double Turns { get; }

    /// <summary>Metres from the start line.</summary>
    public double Distance { get; }

    /// <summary>The reading as typed.</summary>
    public string Text { get; }

    /// <summary>Reads <c>3:6125mm</c>: wheel turns, a colon, the distance with its unit.</summary>
    public static Parsed<RollReading> Read(string text)
    {
        var sides = text.Split(':');
        if (sides.Length != 2) return new Refusal("roll", Spoken($"{Shown.Quoted(text)} is not a roll: write wheel turns, a colon, the distance."), Right);

        return Part(QuantityText.ReadNumber(sides[0]), text).Then(turns =>
            Part(QuantityText.ReadPlain(sides[1], Kind.Length), text).Then(distance => Make(turns, distance.Value, text)));
    }

    private static Parsed<T> Part<T>(Parsed<T> part, string whole)
        where T : notnull
        => part.Refusal is { } refusal ? new Refusal("roll", $"{Shown.Quoted(whole)}: {refusal.Message}", Right) : part;

    private static Parsed<RollReading> Make(double turns, double distance, string text)
        => Refuse(turns, distance, text) is { } refusal ? refusal : new RollReading(turns, distance, text.Trim());

    private static Refusal? Refuse(double turns, double distance, string text)
        => turns is not (> 0 and <= 1000) ? new("roll", Spoken($"{Shown.Quoted(text)}: wheel turns must be more than zero and at most 1000."), Right)
            : distance / turns is not (>= Smallest and <= Largest)
                ? new("roll", Spoken($"{Shown.Quoted(text)} makes {distance / turns:G6} m a turn; road tyres cover {Smallest} to {Largest} m."), Right)
                : null;
}
