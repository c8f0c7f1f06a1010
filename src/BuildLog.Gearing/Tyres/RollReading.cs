using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>One mark on the floor: so far from the start line after so many turns of the wheel.</summary>
/// <param name="Turns">Turns of the wheel, above zero.</param>
/// <param name="Distance">Metres from the start line.</param>
/// <param name="Text">The reading as typed.</param>
public sealed record RollReading(double Turns, double Distance, string Text)
{
    private const string Right = "3:6125mm";
    private const double Smallest = 0.8;
    private const double Largest = 6;

    /// <summary>Reads <c>3:6125mm</c>: wheel turns, a colon, the distance with its unit.</summary>
    public static Parsed<RollReading> Read(string text)
    {
        var sides = text.Split(':');
        if (sides.Length != 2) return new Refusal("roll", $"{Shown.Quoted(text)} is not a roll: write wheel turns, a colon, the distance.", Right);

        return Part(QuantityText.ReadNumber(sides[0]), text).Then(turns =>
            Part(QuantityText.ReadPlain(sides[1], Kind.Length), text).Then(distance => Make(turns, distance.Value, text)));
    }

    private static Parsed<T> Part<T>(Parsed<T> part, string whole)
        where T : notnull
        => part.Refusal is { } refusal ? new Refusal("roll", $"{Shown.Quoted(whole)}: {refusal.Message}", Right) : part;

    private static Parsed<RollReading> Make(double turns, double distance, string text)
    {
        if (turns is <= 0 or > 1000) return new Refusal("roll", $"{Shown.Quoted(text)}: wheel turns must be more than zero and at most 1000.", Right);
        if (distance / turns is < Smallest or > Largest)
            return new Refusal("roll", FormattableString.Invariant($"{Shown.Quoted(text)} makes {distance / turns:G6} m a turn; road tyres cover {Smallest} to {Largest} m."), Right);

        return new RollReading(turns, distance, text.Trim());
    }
}
