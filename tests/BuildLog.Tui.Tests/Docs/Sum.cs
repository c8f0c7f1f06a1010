using System.Globalization;

namespace BuildLog.Tui.Tests.Docs;

/// <summary>Arithmetic as a page writes it: + - · / ² √ and brackets.</summary>
internal sealed class Sum
{
    private readonly string text;
    private int at;

    private Sum(string text) => this.text = text.Replace(" ", "", StringComparison.Ordinal);

    public static bool IsOne(string text) => text.Any(char.IsAsciiDigit) && text.All(c => char.IsAsciiDigit(c) || " .·/()√+-²".Contains(c, StringComparison.Ordinal));

    public static double Of(string text)
    {
        var sum = new Sum(text);
        var value = sum.Terms();
        return sum.at == sum.text.Length ? value : throw new FormatException($"'{text}' stops making sense at '{sum.text[sum.at..]}'.");
    }

    private double Terms()
    {
        var value = Factors();
        while (true)
        {
            if (Take('+')) value += Factors();
            else if (Take('-')) value -= Factors();
            else return value;
        }
    }

    private double Factors()
    {
        var value = Factor();
        while (true)
        {
            if (Take('·')) value *= Factor();
            else if (Take('/')) value /= Factor();
            else return value;
        }
    }

    private double Factor()
    {
        if (Take('√')) return Math.Sqrt(Factor());
        var value = Take('(') ? Bracket() : Number();
        return Take('²') ? value * value : value;
    }

    private double Bracket()
    {
        var value = Terms();
        return Take(')') ? value : throw new FormatException($"A bracket of '{text}' is not closed.");
    }

    private double Number()
    {
        var start = at;
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || text[at] == '.')) at++;
        return double.Parse(text.AsSpan(start, at - start), CultureInfo.InvariantCulture);
    }

    private bool Take(char sign)
    {
        if (at == text.Length || text[at] != sign) return false;
        at++;
        return true;
    }
}
