using System.Globalization;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres;

/// <summary>A tyre marking being read from left to right; spaces never matter, letters may be large or small, a decimal comma is a point.</summary>
internal sealed class Marking(string typed)
{
    private const string Code = "tyre-size";

    // Old markings put the speed before the R: 165 SR 14. V and Z only say "above".
    private const string RatedLetters = "QSTUHVZ";

    private readonly string text = typed.Trim().ToUpperInvariant().Replace(',', '.');

    /// <summary>The marking as typed, without spaces around it.</summary>
    public string Designation => typed.Trim();

    public int Position { get; private set; }

    public bool AtEnd => Next >= text.Length;

    /// <summary>What was read so far has a decimal point, as the width of 6.00-16.</summary>
    public bool HasPoint => Taken.Contains('.', StringComparison.Ordinal);

    private string Taken => text[..Position].TrimEnd();

    private string Rest => text[Next..];

    private int Next
    {
        get
        {
            var at = Position;
            while (at < text.Length && char.IsWhiteSpace(text[at])) at++;
            return at;
        }
    }

    public bool Take(string word)
    {
        if (!text.AsSpan(Next).StartsWith(word, StringComparison.Ordinal)) return false;
        Position = Next + word.Length;
        return true;
    }

    /// <summary>Digits with at most one point, such as 205 or 17.5.</summary>
    public bool Number(out double value)
    {
        int start = Next, end = start;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] == '.' && end > start))) end++;
        if (!double.TryParse(text.AsSpan(start, end - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out value)) return false;
        if (end - start > 6) return false;
        Position = end;
        return true;
    }

    /// <summary>How the cords lie: R, with a speed letter before it in some markings, or D, B or a dash for bias.</summary>
    public bool Cords(out Construction construction, out char? rated)
    {
        (construction, rated) = (Construction.Radial, null);
        if (Take("R")) return true;
        foreach (var letter in RatedLetters)
        {
            if (!Take($"{letter}R")) continue;
            rated = letter;
            return true;
        }

        construction = Construction.Bias;
        return Take("D") || Take("B") || Take("-");
    }

    /// <summary>Nothing but a blank before the next number, as where a dash was left out.</summary>
    public bool Blank()
    {
        if (Next == Position || AtEnd || !char.IsAsciiDigit(text[Next])) return false;
        Position = Next;
        return true;
    }

    /// <summary>Reads on from an earlier place.</summary>
    public void BackTo(int position) => Position = position;

    /// <summary>A load letter of the alpha-numeric sizes with the digits that must follow it: G78, GR70.</summary>
    public bool LoadLetter(out char letter, out bool radial)
    {
        var at = Next;
        letter = at < text.Length ? text[at] : ' ';
        radial = at + 1 < text.Length && text[at + 1] == 'R';
        var digit = at + (radial ? 2 : 1);
        if (letter is < 'A' or > 'N' || digit >= text.Length || !char.IsAsciiDigit(text[digit])) return false;
        Position = digit;
        return true;
    }

    /// <summary>A ply rating such as <c>8PR</c>.</summary>
    public bool PlyRating()
    {
        var before = Position;
        if (Number(out _) && Take("PR")) return true;
        Position = before;
        return false;
    }

    /// <summary>A speed symbol: A1 to A8, or one letter.</summary>
    public string? Symbol()
    {
        var start = Next;
        if (start >= text.Length || !char.IsAsciiLetterUpper(text[start])) return null;
        var length = text[start] == 'A' && start + 1 < text.Length && char.IsAsciiDigit(text[start + 1]) ? 2 : 1;
        Position = start + length;
        return text[start..Position];
    }

    /// <summary>Reading stops here, because something else was expected.</summary>
    public Refusal Stop(string expected)
        => new(Code, Position == 0
            ? Spoken($"{Shown.Quoted(typed)} is no tyre size: {expected} should come first.")
            : Spoken($"{Shown.Quoted(typed)} is no tyre size: after {Shown.Quoted(Taken)} {expected} is expected{(AtEnd ? "" : Spoken($", not {Shown.Quoted(Rest)}"))}."), "");

    /// <summary>What was read is of this notation, but no tyre has it.</summary>
    public Refusal Wrong(string what) => new(Code, Spoken($"{Shown.Quoted(typed)} is no tyre size: {what}."), "");

    /// <summary>The first number is not of this notation, so nothing of it was understood.</summary>
    public Refusal NotBegun(string what)
    {
        Position = 0;
        return Wrong(what);
    }
}
