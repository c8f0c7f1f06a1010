using System.Globalization;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Quantities;

/// <summary>Numbers as people should see them: no digit that the uncertainty does not support, written as the language spoken writes numbers.</summary>
/// <remarks>
/// The 95 % half-width is rounded up to two figures where it starts with 1, else to one; the value follows to the same place
/// (JCGM 100:2008, 7.2.6: an uncertainty of more than two figures says nothing).
/// </remarks>
public static class Rounded
{
    /// <summary>Places shown where nothing limits them.</summary>
    private const int ExactPlaces = 4;

    private const int MostPlaces = 9;

    /// <summary>As many as a double has.</summary>
    private const int FinestPlaces = 15;

    private const int FiguresConverted = 4;

    /// <summary>An interval that ends so close to a limit is on it, for all that anybody can tell.</summary>
    private const int MoreFigures = 3;

    // An end is on a limit where only the rounding of a computation keeps it off.
    private const double LastBits = 1e-9;

    /// <summary>Ratios are below; what is above is counted, such as turns.</summary>
    private const double LargestRatio = 100;

    /// <summary><c>4.74 ± 0.02</c>, <c>2.040 ± 0.012 m</c>; an exact value without ±.</summary>
    public static string WithInterval(Measured measured, Unit unit)
    {
        var half = unit.FromBase(measured.Expanded95);
        return half == 0
            ? Value(measured, unit)
            : WithUnit($"{Value(unit.FromBase(measured.Value), half)} ± {HalfWidth(half)}", unit);
    }

    /// <summary>The same of a value that is judged: with as many more figures as show its interval on the side of each limit where it is.</summary>
    /// <remarks>
    /// ± 24 of 240 is printed ± 30 and seems to reach a limit of 270; printed ± 24 it does not. Two figures are enough but for a hair's breadth, and where rounding
    /// them up still misleads they are rounded to the nearest. Source: JCGM 100:2008, 7.2.6: two figures at most as a rule, more where rounding would spoil what follows,
    /// and common sense before rounding up (28.05 is 28).
    /// </remarks>
    /// <param name="measured">In the base unit.</param>
    /// <param name="unit">To show it in.</param>
    /// <param name="wanted">What it is judged against, in the base unit.</param>
    public static string WithInterval(Measured measured, Unit unit, Window wanted)
    {
        var (value, half) = (unit.FromBase(measured.Value), unit.FromBase(measured.Expanded95));
        if (half == 0) return Value(measured, unit);

        var limits = new Window(unit.FromBase(wanted.Low), unit.FromBase(wanted.High));
        var (usual, truly) = (Places(half), Sides(limits, value, half));
        for (var places = usual; places <= usual + MoreFigures; places++)
        {
            var middle = Fixed(value, places);
            string[] wide = half * Math.Pow(10, places) < 10 ? [HalfWidth(half, places)] : [HalfWidth(half, places), Fixed(half, places)];
            if (wide.FirstOrDefault(each => Sides(limits, Printed(middle), Printed(each)) == truly) is { } shown) return WithUnit($"{middle} ± {shown}", unit);
        }

        return WithInterval(measured, unit);
    }

    // Each end against each limit: short of it, on it, beyond it.
    private static (int, int, int, int) Sides(Window limits, double value, double half)
        => (Side(value - half, limits.Low), Side(value - half, limits.High), Side(value + half, limits.Low), Side(value + half, limits.High));

    private static int Side(double end, double limit) => Math.Abs(end - limit) <= LastBits * Math.Abs(limit) ? 0 : end.CompareTo(limit);

    /// <summary>The ends of what <see cref="WithInterval(Measured, Unit)"/> prints: <c>1.86 to 2.00 m</c> for <c>1.93 ± 0.07 m</c>; never narrower than the interval itself.</summary>
    public static string Ends(Measured measured, Unit unit)
    {
        var half = unit.FromBase(measured.Expanded95);
        if (half == 0) return Value(measured, unit);

        // From the printed numbers, so that a value half way between two places goes the same way in both.
        var places = Places(half);
        var (middle, wide) = (Printed(Fixed(unit.FromBase(measured.Value), places)), Printed(HalfWidth(half)));
        return WithUnit(Spoken($"{Fixed(middle - wide, places)} to {Fixed(middle + wide, places)}"), unit);
    }

    /// <summary>The value alone, to the places its uncertainty supports, with its unit.</summary>
    /// <remarks>An exact ratio is shown as finely as ratios are quoted: 4.10, 4.778.</remarks>
    public static string Value(Measured measured, Unit unit)
        => measured.IsExact && unit == Units.One && Math.Abs(measured.Value) < LargestRatio
            ? Fixed(measured.Value, Math.Abs(measured.Value - Math.Round(measured.Value, 2)) < 1e-9 ? 2 : 3)
            : WithUnit(Value(unit.FromBase(measured.Value), unit.FromBase(measured.Expanded95)), unit);

    /// <summary>With its interval, of a value worded in another unit: what is exact as it was typed has four figures here, as nobody typed its decimals.</summary>
    public static string Converted(Measured measured, Unit worded, Unit shown)
        => measured.IsExact && shown != worded ? InFigures(measured, shown) : WithInterval(measured, shown);

    /// <summary>An exact value in four figures.</summary>
    public static string InFigures(Measured exact, Unit shown)
    {
        var value = shown.FromBase(exact.Value);
        return WithUnit(value == 0 ? "0" : Exact(Math.Round(value, Math.Clamp(FiguresConverted - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, MostPlaces))), shown);
    }

    /// <summary><paramref name="value"/> to the place that ± <paramref name="halfWidth"/> supports.</summary>
    public static string Value(double value, double halfWidth)
        => halfWidth == 0 ? Exact(value) : Fixed(value, Places(halfWidth));

    /// <summary>A half-width on its own, rounded up to the figures shown.</summary>
    public static string HalfWidth(double halfWidth) => HalfWidth(halfWidth, Places(halfWidth));

    private static string HalfWidth(double halfWidth, int places)
    {
        var step = Math.Pow(10, -places);
        return Fixed(Math.Ceiling((halfWidth / step) - 1e-9) * step, places);
    }

    /// <summary>A window rounded inwards, so that every value between the printed ends is inside the true ones.</summary>
    /// <remarks>A window too narrow for the places gets as many more as it needs.</remarks>
    /// <param name="low">The lower end in the unit; negative infinity for none.</param>
    /// <param name="high">The upper end in the unit; infinity for none.</param>
    /// <param name="places">Decimal places shown.</param>
    /// <param name="unit">Named after the numbers: <c>2400 to 2600 rev/min</c>, <c>2700 rev/min or less</c>.</param>
    public static string Within(double low, double high, int places, Unit unit)
    {
        (var from, var to, places) = Inwards(low, high, places);
        return (double.IsFinite(low), double.IsFinite(high)) switch
        {
            (true, true) when Fixed(from, places) == Fixed(to, places) => WithUnit(Fixed(from, places), unit),
            (true, true) => WithUnit(Spoken($"{Fixed(from, places)} to {Fixed(to, places)}"), unit),
            (true, false) => Spoken($"{WithUnit(Fixed(from, places), unit)} or more"),
            _ => Spoken($"{WithUnit(Fixed(to, places), unit)} or less"),
        };
    }

    /// <summary>An interval to so many places, or as many more as keep its ends apart; one that has no width is one number.</summary>
    /// <param name="low">The lower end in the unit.</param>
    /// <param name="high">The upper end in the unit.</param>
    /// <param name="places">Decimal places shown.</param>
    /// <param name="unit">Named after the numbers.</param>
    public static string Between(double low, double high, int places, Unit unit)
    {
        while (low != high && Fixed(low, places) == Fixed(high, places) && places < FinestPlaces) places++;

        var (from, to) = (Fixed(low, places), Fixed(high, places));
        return WithUnit(from == to ? from : Spoken($"{from} to {to}"), unit);
    }

    /// <summary>The ends as <see cref="Within"/> prints them, and to how many places.</summary>
    /// <param name="low">The lower end; negative infinity for none.</param>
    /// <param name="high">The upper end; infinity for none.</param>
    /// <param name="places">Decimal places, as many more as a narrow window needs.</param>
    public static (double From, double To, int Places) Inwards(double low, double high, int places)
    {
        var step = Math.Pow(10, -places);
        var from = Math.Ceiling((low / step) - 1e-9) * step;
        var to = Math.Floor((high / step) + 1e-9) * step;
        return from > to && places < MostPlaces ? Inwards(low, high, places + 1) : (from, to, places);
    }

    /// <summary>A number that is already rounded with its unit: <c>2.04 m</c>, <c>3.5°</c>; a plain ratio stays bare.</summary>
    public static string WithUnit(string number, Unit unit) => unit.Symbol switch
    {
        "" => number,
        "°" => $"{number}°",
        _ => $"{number} {unit.InWords}",
    };

    /// <summary>As many places as needed, four at most: <c>4.1</c>, <c>4.7778</c>, <c>2500</c>.</summary>
    public static string Exact(double value)
        => Unsigned(Math.Round(value, ExactPlaces).ToString("0.####", Language.Spoken.Culture));

    /// <summary>So many places behind the point, zeros kept: <c>4.10</c>. Below zero they count to the left of it: −2 rounds to hundreds.</summary>
    public static string Fixed(double value, int places)
    {
        // Above the decimal point, places count from the point to the left.
        if (places < 0)
        {
            var step = Math.Pow(10, -places);
            return Unsigned((Math.Round(value / step) * step).ToString("0", Language.Spoken.Culture));
        }

        return Unsigned(value.ToString("F" + places.ToString(CultureInfo.InvariantCulture), Language.Spoken.Culture));
    }

    /// <summary>A number as an entry or an option takes it, as many places as needed: with the point, which no reader takes for anything else, whatever is spoken.</summary>
    public static string Typed(double value) => Unsigned(Math.Round(value, ExactPlaces).ToString("0.####", CultureInfo.InvariantCulture));

    /// <summary>The same with so many places, zeros kept.</summary>
    public static string Typed(double value, int places) => Unsigned(value.ToString("F" + places.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));

    /// <summary>The decimal place of the last figure that ± <paramref name="halfWidth"/> supports; negative left of the point.</summary>
    public static int Places(double halfWidth)
    {
        var exponent = (int)Math.Floor(Math.Log10(halfWidth) + 1e-12);
        var startsWithOne = halfWidth / Math.Pow(10, exponent) < 2 - 1e-9;
        return Math.Clamp(-exponent + (startsWithOne ? 1 : 0), -6, MostPlaces);
    }

    private static double Printed(string number) => double.Parse(number, Language.Spoken.Culture);

    // What rounds to nothing has no sign.
    private static string Unsigned(string number)
        => number.StartsWith('-') && number.AsSpan(1).IndexOfAnyExcept("0.,") < 0 ? number[1..] : number;
}
