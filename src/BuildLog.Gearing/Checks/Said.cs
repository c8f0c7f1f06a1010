using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Checks;

/// <summary>Numbers and words as the sentences of the checks have them.</summary>
internal static class Said
{
    /// <summary>What may get lost in another unit, as a power of ten: a mile an hour is said for a kilometre, a hundredth of an inch for a millimetre.</summary>
    private const double MostLost = 0.25;

    /// <summary>With its interval, and with no more than so many decimals, however well the inputs are known.</summary>
    public static SaidNumber Number(Measured value, Unit unit, int places)
    {
        string To(Unit shown, Func<string> interval)
        {
            var (half, most) = (shown.FromBase(value.Expanded95), PlacesIn(shown, unit, places));
            return half == 0 || Rounded.Places(half) > most ? Rounded.WithUnit(Rounded.Fixed(shown.FromBase(value.Value), most), shown) : interval();
        }

        return new(unit, shown => To(shown, () => Rounded.WithInterval(value, shown))) { Judged = (shown, wanted) => To(shown, () => Rounded.WithInterval(value, shown, wanted)) };
    }

    /// <summary>With its interval.</summary>
    public static SaidNumber Number(Measured value, Unit unit)
        => new(unit, shown => Rounded.WithInterval(value, shown)) { Judged = (shown, wanted) => Rounded.WithInterval(value, shown, wanted) };

    /// <summary>Without its interval, to the places that supports.</summary>
    public static SaidNumber Alone(Measured value, Unit unit) => new(unit, shown => value.IsExact && shown != unit
        ? Rounded.InFigures(value, shown)
        : Rounded.Value(value, shown));

    /// <summary>So much or more, rounded up to whole units or decimals.</summary>
    public static SaidNumber OrMore(double value, Unit unit, int places) => Between(value, double.PositiveInfinity, unit, places);

    /// <summary>So much or less, rounded down.</summary>
    public static SaidNumber OrLess(double value, Unit unit, int places) => Between(double.NegativeInfinity, value, unit, places);

    /// <summary>The whole unit that is enough.</summary>
    public static SaidNumber AtLeast(double value, Unit unit) => new(unit, shown => Rounded.WithUnit(Rounded.Fixed(Math.Ceiling(shown.FromBase(value)), 0), shown));

    /// <summary>What of a window still holds once it is typed as it is written: known to half its last digit.</summary>
    public static SaidNumber AsTyped(Window window, Unit unit, int places)
        => new(unit, shown => window.AsTyped(shown, PlacesIn(shown, unit, places)) ?? window.InWords(shown));

    /// <summary>The size that leaves a wanted play to the part it goes on, once it is typed as it is written; where that part is known too coarsely for any, its own size.</summary>
    public static SaidNumber Fitting(Measured beside, Window play, Unit unit, int places)
        => new(unit, shown => new Window(beside.Interval95.High + play.Low, beside.Interval95.Low + play.High).AsTyped(shown, PlacesIn(shown, unit, places)) ?? Number(beside, unit, places).Words(shown));

    /// <summary>A torque rating that surely is enough for what is asked, told no finer than that is known; ratings are meant as they are written.</summary>
    public static SaidNumber RatedFor(Measured asked) => new(Units.NewtonMetre, shown => Enough(asked.Interval95.High, asked, shown));

    /// <summary>The same, and that more is enough too.</summary>
    public static SaidNumber RatedOrMore(Measured asked) => new(Units.NewtonMetre, shown => Spoken($"{Enough(asked.Interval95.High, asked, shown)} or more"));

    /// <summary>The rating that surely is so many times what is asked, or more.</summary>
    public static SaidNumber RatedOrMore(Measured asked, double times)
    {
        var enough = PartWindow.Surely(1 / asked, Window.AtLeast(times)) is { IsEmpty: false } sure ? sure.Low : times * asked.Interval95.High;
        return new(Units.NewtonMetre, shown => Spoken($"{Enough(enough, asked * times, shown)} or more"));
    }

    private static string Enough(double enough, Measured asked, Unit shown)
    {
        var places = asked.IsExact ? 0 : Math.Min(0, Rounded.Places(shown.FromBase(asked.Expanded95)));
        var step = Math.Pow(10, -places);
        return Rounded.WithUnit(Rounded.Fixed(Math.Ceiling((shown.FromBase(enough) / step) - 1e-9) * step, places), shown);
    }

    public static SaidNumber Between(double low, double high, Unit unit, int places)
        => new(unit, shown => Rounded.Within(shown.FromBase(low), shown.FromBase(high), PlacesIn(shown, unit, places), shown));

    /// <summary>A clause of a sentence, where the compiler would take it for a plain text.</summary>
    public static Sentence As(Sentence clause) => clause;

    public static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static int PlacesIn(Unit shown, Unit unit, int places)
        => shown == unit ? places : places + (int)Math.Ceiling(Math.Log10(shown.Factor / unit.Factor) - MostLost);
}
