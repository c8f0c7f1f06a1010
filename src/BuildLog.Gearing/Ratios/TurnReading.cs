using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>Which wheels turned during a count.</summary>
public enum Wheels
{
    /// <summary>Open differential, the other wheel blocked.</summary>
    OneHeld,

    /// <summary>Both wheels turned alike: locked, limited slip that drags, or rolling on the ground.</summary>
    Together,

    /// <summary>Both wheels' turns were read.</summary>
    Each,
}

/// <summary>One count: so many propshaft turns for so many turns of the left and the right wheel.</summary>
/// <remarks>A gear is counted alike: the output stands for both wheels turning together, the input for the propshaft.</remarks>
public sealed record TurnReading
{
    private const double FewestWheelTurns = 0.5;
    private const double MostTurns = 10_000;

    /// <param name="left">Signed turns, positive in the sense of rolling forward.</param>
    /// <param name="right">Signed turns, positive in the sense of rolling forward.</param>
    /// <param name="propshaft">Propshaft turns, above zero.</param>
    /// <param name="wheels">Which wheels turned.</param>
    /// <param name="text">The reading as typed.</param>
    /// <exception cref="RefusedException">Turns that no propshaft can have made, or nobody counts.</exception>
    public TurnReading(double left, double right, double propshaft, Wheels wheels, string text)
    {
        if (Refuse(left, right, propshaft, wheels, CountedEnds.Axle, text, CountedEnds.Axle.Example) is { } refusal) throw new RefusedException(refusal);
        (Left, Right, Propshaft, Wheels, Text) = (left, right, propshaft, wheels, text);
    }

    /// <summary>Turns of the left wheel, positive forwards.</summary>
    public double Left { get; }

    /// <summary>Turns of the right wheel, positive forwards.</summary>
    public double Right { get; }

    /// <summary>Turns of the propshaft, or of a gearbox's input.</summary>
    public double Propshaft { get; }

    /// <summary>Which wheels turned.</summary>
    public Wheels Wheels { get; }

    /// <summary>The reading as typed.</summary>
    public string Text { get; }

    /// <summary>For whoever reads it. Before the colon the comma parts the wheels and stays; a decimal comma there would be read as one.</summary>
    public string InWords
    {
        get
        {
            var colon = Text.IndexOf(':', StringComparison.Ordinal);
            return string.Join(Wheels == Wheels.Each ? "; " : "", Text[..Math.Max(colon, 0)].Split(',').Select(turns => AsWritten.Numbers(turns.Trim()))) + AsWritten.Numbers(Text[Math.Max(colon, 0)..]);
        }
    }

    /// <summary>What its sentences call the two ends.</summary>
    public CountedEnds Ends { get; init; } = CountedEnds.Axle;

    /// <summary>W = w_left + w_right, what the propshaft's turns are shared over.</summary>
    public double WheelSum => Left + Right;

    /// <summary>What the errors depend on: a wheel that was read as standing still has no stop of its own.</summary>
    public Wheels Turned => Wheels == Wheels.Each && (Left == 0 || Right == 0) ? Wheels.OneHeld : Wheels;

    /// <summary>Reads <c>10:20.5</c> (wheel:propshaft), or <c>10,10:41</c> (left,right:propshaft). Before the colon the comma parts the wheels; behind it, it is a decimal mark like the point.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="wheels">Which wheels turned; <see cref="Wheels.Each"/> asks for the form with both.</param>
    public static Parsed<TurnReading> Read(string text, Wheels wheels)
    {
        var example = wheels == Wheels.Each ? "10,10:41" : CountedEnds.Axle.Example;
        return Sides(text, CountedEnds.Axle, example).Then<TurnReading>(sides =>
        {
            var turned = sides[0].Split(',');
            if (wheels == Wheels.Each && turned.Length != 2)
                return new Refusal("turns", Spoken($"{Shown.Quoted(text)} names one wheel; with both wheels read, write left,right:propshaft."), example);
            if (wheels != Wheels.Each && turned.Length != 1)
                return new Refusal("turns", Spoken($"{Shown.Quoted(text)} names both wheels, so it already says how they turned; before the colon decimals use the point."), example);

            return Turns(turned[0], text, example).Then(first =>
                (turned.Length == 2 ? Turns(turned[1], text, example) : first).Then(second =>
                    Turns(sides[1], text, example).Then(propshaft => wheels switch
                    {
                        Wheels.OneHeld => Make(first, 0, propshaft, wheels, CountedEnds.Axle, text, example),
                        Wheels.Together => Make(first, first, propshaft, wheels, CountedEnds.Axle, text, example),
                        _ => Make(first, second, propshaft, wheels, CountedEnds.Axle, text, example),
                    })));
        });
    }

    /// <summary>Reads a gear's count, <c>10:30.1</c> (output:input).</summary>
    public static Parsed<TurnReading> ReadGear(string text)
    {
        var ends = CountedEnds.Gearbox;
        return Sides(text, ends, ends.Example).Then(sides =>
            Turns(sides[0], text, ends.Example).Then(output =>
                Turns(sides[1], text, ends.Example).Then(input => Make(output, output, input, Wheels.Together, ends, text, ends.Example))));
    }

    private static Parsed<string[]> Sides(string text, CountedEnds ends, string example)
        => text.Split(':') is { Length: 2 } sides
            ? sides
            : new Refusal("turns", Spoken($"{Shown.Quoted(text)} is not a count: write {ends.Driven} turns, a colon, {ends.Driving} turns."), example);

    private static Parsed<TurnReading> Make(double left, double right, double driving, Wheels wheels, CountedEnds ends, string text, string example)
        => Refuse(left, right, driving, wheels, ends, text, example) is { } refusal ? refusal : new TurnReading(left, right, driving, wheels, text.Trim()) { Ends = ends };

    private static Refusal? Refuse(double left, double right, double driving, Wheels wheels, CountedEnds ends, string text, string example)
    {
        var shown = Shown.Quoted(text);
        if (!(driving > 0))
            return new("turns", Spoken($"{shown}: {ends.Driving} turns must be more than zero."), example);
        if (wheels != Wheels.Each && !(left > 0))
            return new("turns", Spoken($"{shown}: {ends.Driven} turns must be more than zero."), example);
        if (!(Math.Max(driving, Math.Max(Math.Abs(left), Math.Abs(right))) <= MostTurns))
            return new("turns", Spoken($"{shown}: nobody counts more than 10 000 turns."), example);
        if (Math.Abs(left + right) < FewestWheelTurns)
        {
            return wheels == Wheels.Each
                ? new("wheels-cancel", Spoken($"{shown}: the wheel turns cancel, so the propshaft stands still and no ratio can be read. Hold one wheel."), "10,0:20.5")
                : new("turns", Spoken($"{shown}: count at least {CountedEnds.Half(ends.Driven)}; ten are better."), example);
        }

        return left + right < 0 ? new("turns", Spoken($"{shown}: together the wheels turned backwards; count the turns as positive in that sense."), example) : null;
    }

    private static Parsed<double> Turns(string part, string whole, string example)
        => QuantityText.ReadNumber(part) is { Refusal: { } refusal }
            ? new Refusal("turns", $"{Shown.Quoted(whole)}: {refusal.Message}", example)
            : QuantityText.ReadNumber(part);
}
