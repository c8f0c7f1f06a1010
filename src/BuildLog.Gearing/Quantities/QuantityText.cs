using System.Globalization;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Quantities;

/// <summary>Reads quantities the way people write them: <c>27 in</c>, <c>6' 2 1/2"</c>, <c>2,04 m</c>, <c>75 mph</c>, <c>4.08±0.03</c>.</summary>
/// <remarks>
/// Point and comma are both decimal marks, whatever the machine's language; <c>1,234 mm</c> could be either and is refused with both readings.
/// <c>±</c> is a 95 % half-width; <c>u=0.015</c> a standard uncertainty. It never guesses: what it cannot read it names.
/// </remarks>
public static class QuantityText
{
    /// <summary>The code of a refusal where nothing was typed.</summary>
    internal const string Empty = "empty";

    /// <summary>Longer than any quantity is written; so short that no number in it is beyond what a double holds.</summary>
    private const int LongestText = 200;

    private const string NotANumber = "not-a-number";
    private const string Ambiguous = "ambiguous";
    private const string PerMinute = "1/min";

    /// <summary>Reads one quantity into its base unit, with the uncertainty that was typed beside it; sums such as <c>6' 2 1/2"</c> are added up.</summary>
    /// <remarks>
    /// Refused, with an example of right: nothing at all; over 200 signs; what is no number, or could be two; a unit of another kind, or none where one is needed;
    /// a negative uncertainty. Whether the number itself may be so large or small is for its own reader.
    /// </remarks>
    /// <param name="text">What was typed.</param>
    /// <param name="kind">What is expected.</param>
    /// <param name="unitIfNone">The unit of a bare number; null for the one that is usual of its kind, without which a unit must be typed.</param>
    public static Parsed<Typed> Read(string text, Kind kind, Unit? unitIfNone = null)
    {
        var shown = Shown.Quoted(text);
        var example = kind.Example();
        if (text.Length > LongestText) return new Refusal("too-long", Spoken($"{shown} is too long for {kind.WithArticle()}."), example);

        var clean = Tidy(text);
        if (clean.Length == 0) return new Refusal(Empty, Spoken($"A{kind.WithArticle()[1..]} is missing."), example);

        var (body, tail, isStandard) = SplitUncertainty(clean);
        unitIfNone ??= kind.Usual();

        // In "2.04 ± 0.01 m" the unit stands behind the uncertainty and belongs to both.
        var lentUnit = tail is null ? null : TrailingUnit(tail, kind);
        return Sum(body, kind, lentUnit ?? unitIfNone, text).Then<Typed>(read => read with { IsBare = read.IsBare && lentUnit is null }).Then(main => tail is null
            ? main
            : Uncertainty(tail, main, kind, text).Then<Typed>(size => size < 0
                ? new Refusal("negative", Spoken($"{shown}: an uncertainty is zero or more."), example)
                : main with { StandardUncertainty = isStandard ? size : size / StudentT.Normal975 }));
    }

    /// <summary>A quantity whose uncertainty is asked for elsewhere, such as a mark on a tape: a typed ± would be lost, so it is refused.</summary>
    public static Parsed<Typed> ReadPlain(string text, Kind kind, Unit? unitIfNone = null)
        => Read(text, kind, unitIfNone).Then<Typed>(typed => typed.StandardUncertainty == 0
            ? typed
            : new Refusal("uncertainty", Spoken($"{Shown.Quoted(text)}: no uncertainty belongs here, the {kind.InWords()} alone."), kind.Example()));

    /// <summary>What was typed with its unit: behind a bare number the usual one. What is no such quantity stays as it is.</summary>
    public static string WithUnit(string text, Kind kind, Unit usual) => Read(text, kind, usual).Understood(out var typed) && typed.IsBare ? $"{typed.Text} {usual}" : text;

    /// <summary>A length that was read as one of a road: what is none is no distance, in the units that roads are measured in. Other refusals stay.</summary>
    public static Parsed<Typed> OnARoad(this Parsed<Typed> read, string text)
        => read.Refusal is { Code: NotANumber or "unknown-unit" or "wrong-kind" }
            ? new Refusal("distance", Spoken($"{Shown.Quoted(text.Trim())} is no distance: write kilometres or miles."), "84 210 km")
            : read;

    /// <summary>A bare number, such as a count of turns: <c>20.5</c>, <c>20 1/2</c>.</summary>
    public static Parsed<double> ReadNumber(string text) => ReadPlain(text, Kind.Number).Then<double>(typed => typed.Value);

    private static Parsed<double> Uncertainty(string tail, Typed main, Kind kind, string text)
        => tail.EndsWith('%') && kind != Kind.Share
            ? Sum(tail, Kind.Share, null, text).Then<double>(share => Math.Abs(main.Value) * share.Value)
            : Sum(tail, kind, main.Unit, text).Then<double>(part => part.Value);

    private static Unit? TrailingUnit(string tail, Kind kind)
    {
        var start = tail.Length;
        while (start > 0 && !char.IsAsciiDigit(tail[start - 1])) start--;
        return Units.Spelt(tail[start..].Trim()) is { } unit && unit.Kind == kind && unit.Symbol.Length > 0 ? unit : null;
    }

    private static (string Body, string? Tail, bool IsStandard) SplitUncertainty(string clean)
    {
        var (body, mark, tail) = AtUncertainty(clean);
        return mark.Length == 0 ? (clean, null, false) : (body, tail, mark.StartsWith('u'));
    }

    /// <summary>What stands before and behind the mark of a typed uncertainty; no mark and nothing behind it where none was typed.</summary>
    internal static (string Body, string Mark, string Tail) AtUncertainty(string text)
    {
        foreach (var mark in (string[])["±", "+/-", "+-", "u=", "u ="])
        {
            var at = text.IndexOf(mark, StringComparison.Ordinal);
            if (at > 0) return (text[..at].TrimEnd(), mark, text[(at + mark.Length)..].Trim());
        }

        return (text, "", "");
    }

    // One or more "number unit" pairs, each unit smaller than the one before: 6' 2 1/2".
    private static Parsed<Typed> Sum(string body, Kind kind, Unit? unitIfNone, string text)
    {
        var shown = Shown.Quoted(text);
        var negative = body.StartsWith('-');
        var position = negative ? 1 : 0;
        var total = 0.0;
        Unit? first = null, previous = null;
        var isBare = false;

        while (position < body.Length || first is null)
        {
            var start = position;
            var read = Number(body, ref position, text);
            if (!read.Understood(out var number)) return read.Refusal is { Code: not NotANumber } known ? InItsUnit(known, body[start..]) : WrongNumber(body[start..], kind, text);

            var unitText = UnitAt(body, ref position);
            var unit = unitText.Length == 0 ? unitIfNone : Units.Spelt(unitText);
            if (unitText.Length == 0 && unit is null)
                return new Refusal("no-unit", Spoken($"{shown} has no unit: add {Choices(kind)}."), kind.Example());
            if (unit is null)
                return kind == Kind.Number
                    ? new Refusal("unknown-unit", Spoken($"{shown} is not a plain number: {Shown.Quoted(unitText)} is left over."), kind.Example())
                    : new Refusal("unknown-unit", Spoken($"{shown}: the unit {Shown.Quoted(unitText)} is not known; for {kind.WithArticle()} use {Choices(kind)}."), kind.Example());
            if (unit.Kind != kind)
                return new Refusal("wrong-kind", Spoken($"{shown}: {Shown.Quoted(unitText)} is a unit of {unit.Kind.InWords()}, and {kind.WithArticle()} is wanted."), kind.Example());
            if (previous is not null && kind == Kind.Number)
                return new Refusal("several", Spoken($"{shown} is more than one number: the second begins at {Shown.Quoted(body[start..].Trim())}."), kind.Example());
            if (previous is not null && unit.Factor >= previous.Factor)
                return new Refusal("unit-order", Spoken($"{shown}: after '{previous}' a smaller unit is expected, not '{unit}'."), "6 ft 2 in");

            total += unit.ToBase(number);
            isBare |= unitText.Length == 0;
            first ??= unit;
            previous = unit;
        }

        return new Typed(negative ? -total : total, first, text.Trim()) { IsBare = isBare };
    }

    private static Refusal WrongNumber(string rest, Kind kind, string text)
        => new(NotANumber, rest.Trim().Length == 0
            ? Spoken($"{Shown.Quoted(text)} stops where a number is expected.")
            : Spoken($"{Shown.Quoted(text)} is not {kind.WithArticle()}: reading stopped at {Shown.Quoted(rest)}."), kind.Example());

    // "20", "20.5", "20 1/2", "1/2"; leaves the position alone when there is none.
    private static Parsed<double> Number(string body, ref int position, string text)
    {
        var at = position;
        SkipSpaces(body, ref at);
        if (!Digits(body, ref at, out var whole)) return new Refusal(NotANumber, Spoken($"{Shown.Quoted(text)} is not a number."), Kind.Number.Example());

        var afterWhole = at;
        if (at < body.Length && body[at] == '/')
        {
            at++;
            return Fraction(0, whole, body, ref at, ref position, text);
        }

        SkipSpaces(body, ref at);
        if (at > afterWhole && !IsPerMinute(body, at) && Digits(body, ref at, out var numerator) && at < body.Length && body[at] == '/')
        {
            if (!Plain(whole, text).Understood(out var wholes)) return Plain(whole, text).Refusal!;
            at++;
            return Fraction(wholes, numerator, body, ref at, ref position, text);
        }

        // "2 040 mm": digits in groups of three belong to one number.
        at = afterWhole;
        while (IsGroup(body, at))
        {
            whole += body.Substring(at + 1, 3);
            at += 4;
        }

        if (at > afterWhole && at < body.Length && body[at] is '.' or ',')
        {
            var decimals = at;
            if (Digits(body, ref at, out var rest)) whole += rest;
            else at = decimals;
        }

        position = at;
        return Plain(whole, text);
    }

    // "1/min" begins with a digit and has a stroke; no other unit does.
    private static bool IsPerMinute(string body, int at) => body.AsSpan(at).StartsWith(PerMinute, StringComparison.OrdinalIgnoreCase);

    private static bool IsGroup(string body, int at)
        => at + 3 < body.Length && body[at] == ' '
            && char.IsAsciiDigit(body[at + 1]) && char.IsAsciiDigit(body[at + 2]) && char.IsAsciiDigit(body[at + 3])
            && (at + 4 == body.Length || !(char.IsAsciiDigit(body[at + 4]) || body[at + 4] == '/'));

    private static Parsed<double> Fraction(double whole, string numerator, string body, ref int at, ref int position, string text)
    {
        SkipSpaces(body, ref at);
        if (!Digits(body, ref at, out var denominator))
            return new Refusal("fraction", Spoken($"{Shown.Quoted(text)}: a fraction needs a whole number after '/'."), "20 1/2");
        if (!Plain(numerator, text).Understood(out var above) || !Plain(denominator, text).Understood(out var below) || below == 0)
            return new Refusal("fraction", Spoken($"{Shown.Quoted(text)}: {Shown.Quoted($"{numerator}/{denominator}")} is not a fraction."), "20 1/2");
        position = at;
        return whole + (above / below);
    }

    // A length without its unit would be refused in its turn.
    private static Refusal InItsUnit(Refusal known, string digitsAndUnit)
    {
        var at = 0;
        return known.Code == Ambiguous && Digits(digitsAndUnit, ref at, out _) && UnitAt(digitsAndUnit, ref at) is { Length: > 0 } unit && Units.Spelt(unit) is not null
            ? known with { Example = known.Example + unit }
            : known;
    }

    private static bool Digits(string body, ref int at, out string digits)
    {
        var start = at;
        while (at < body.Length && (char.IsAsciiDigit(body[at]) || body[at] is '.' or ',')) at++;
        digits = body[start..at];
        return digits.AsSpan().ContainsAnyInRange('0', '9');
    }

    // The point and the comma are told apart by what follows them, never by the machine's culture: the last mark is the decimal one, a mark
    // that stands twice parts thousands.
    private static Parsed<double> Plain(string digits, string text)
    {
        int comma = digits.LastIndexOf(','), point = digits.LastIndexOf('.');
        if (point < 0 && comma > 0 && digits[0] != '0' && digits.IndexOf(',', StringComparison.Ordinal) == comma && Joined(digits) is { } joined)
        {
            var pointed = digits.Replace(',', '.');
            return new Refusal(Ambiguous, Spoken($"{Shown.Quoted(text)} could be {joined} or {pointed}: write it without the comma."), pointed);
        }

        var last = Math.Max(comma, point);
        var twice = last >= 0 && Math.Min(comma, point) < 0 && digits.IndexOf(digits[last], StringComparison.Ordinal) != last;
        var whole = last < 0 || twice ? digits : digits[..last];
        var decimals = last < 0 || twice ? "0" : digits[(last + 1)..];
        return Joined(whole) is { } plain
            && double.TryParse($"{plain}.{decimals}", NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
            ? value
            : new Refusal(NotANumber, Spoken($"{Shown.Quoted(text)}: {Shown.Quoted(digits)} is not a number."), Kind.Number.Example());
    }

    // Digits without their thousands marks; null where the marks do not part groups of three.
    private static string? Joined(string whole)
    {
        var groups = whole.Split(',', '.');
        if (groups.Length == 1) return whole;
        if (whole.Contains(',', StringComparison.Ordinal) && whole.Contains('.', StringComparison.Ordinal)) return null;
        return groups[0].Length is >= 1 and <= 3 && groups.Skip(1).All(group => group.Length == 3) ? string.Concat(groups) : null;
    }

    private static string UnitAt(string body, ref int position)
    {
        SkipSpaces(body, ref position);
        var start = position;

        if (IsPerMinute(body, position)) position += PerMinute.Length;
        while (position < body.Length && !char.IsAsciiDigit(body[position]) && !(position > start && body[position] == '-' && !IsHyphen(body, position))) position++;

        var unit = body[start..position].Trim();

        // ":1" ends with one: a ratio may be written 4.10:1.
        if (unit == ":" && position < body.Length && body[position] == '1') unit += body[position++];

        // "m2" at the end is an area; a 2 that goes on is another number.
        if (unit == "m" && position == body.Length - 1 && body[position] == '2' && body[position - 1] != ' ') unit += body[position++];
        SkipSpaces(body, ref position);
        return unit;
    }

    // "lb-ft": between letters the dash is part of the unit.
    private static bool IsHyphen(string body, int at) => at + 1 < body.Length && char.IsAsciiLetter(body[at - 1]) && char.IsAsciiLetter(body[at + 1]);

    private static void SkipSpaces(string body, ref int position)
    {
        while (position < body.Length && body[position] == ' ') position++;
    }

    private static string Choices(Kind kind) => string.Join(", ", Units.Of(kind).Select(unit => unit.Symbol));

    // Typographic marks people paste become the plain ones; ½ becomes " 1/2".
    private static string Tidy(string text)
    {
        var tidy = new System.Text.StringBuilder(text.Length + 8);
        foreach (var c in text)
        {
            _ = c switch
            {
                '\u2032' or '\u2019' or '\u2018' => tidy.Append('\''),
                '\u2033' or '\u201d' or '\u201c' => tidy.Append('"'),
                '\u2044' => tidy.Append('/'),
                '\u2212' or '\u2013' => tidy.Append('-'),
                '½' => tidy.Append(" 1/2"),
                '¼' => tidy.Append(" 1/4"),
                '¾' => tidy.Append(" 3/4"),
                '⅓' => tidy.Append(" 1/3"),
                '⅔' => tidy.Append(" 2/3"),
                '⅛' => tidy.Append(" 1/8"),
                '⅜' => tidy.Append(" 3/8"),
                '⅝' => tidy.Append(" 5/8"),
                '⅞' => tidy.Append(" 7/8"),
                _ when char.IsWhiteSpace(c) => tidy.Append(' '),
                _ => tidy.Append(c),
            };
        }

        return tidy.Replace("''", "\"").ToString().Trim();
    }
}
