using System.Globalization;
using System.Text;
using BuildLog.Gearing.Quantities;
using CsCheck;
using Assert = Xunit.Assert;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>Whatever can be typed, and what is asked of a reader that meets it. The tests of the other houses' readers share it.</summary>
internal static class AnyTyped
{
    private const int Texts = 100_000;

    // Pieces that readers look for, glued in any order, beside any characters at all.
    private static readonly string[] Pieces =
    [
        "planetary ", "kPa", "°C", "75/30", "29/19", "0", "1", "9", "10", "20.5", "205", "65", "15", "94", "1,234", "4.10", "99999999999", ".", ",", "/", ":", " ", "-", "+", "±", "u=", "%", "½", "⅛", "\"", "'",
        "''", "in", "mm", "m", "km/h", "rpm", "rev/min", "1/min", "at most", "R", "ZR", "D", "B", "LT", "P", "H", "A8", "m2", "m²", "Nm", "lb-ft", "kW", "(", ")", "XL", "C", "x", "31", "6.00", "G78", "GR", "PR", "\n", "\t", "\u001b[31m",
        "\0", "İ", "ı", "ß", "\ud83d", "𝟙", "٣", "e", "E9", "NaN", "∞", "M+S", "€", "EUR", "kr", "h", "min", "May", "2026", "0001", "9999", "spring ", "before ", "about ", " to ", "today", "~", ".pdf", "axle", ";", "air ",
    ];

    /// <summary>What readers look for glued in any order, any characters at all, and long numbers.</summary>
    public static Gen<string> Text { get; } = Gen.Frequency(
        (6, Gen.Int[0, Pieces.Length - 1].Array[0, 12].Select(picks => string.Concat(picks.Select(pick => Pieces[pick])))),
        (2, Gen.String[Gen.Char, 0, 40]),
        (1, Gen.String[Gen.Char["0123456789.,/:' \"-"], 0, 250]));

    /// <summary>A hundred thousand texts: each is understood or refused in one short line that says where, and nothing escapes.</summary>
    public static void Meets(string name, Func<string, Refusal?> reader)
        => Text.Sample(
            text =>
            {
                if (reader(text) is not { } refusal) return;

                Assert.False(refusal.Sentence.Any(char.IsControl), $"{name}: control characters in the refusal of a text.");
                Assert.True(refusal.Sentence.Length < 300, $"{name}: {refusal.Sentence.Length} characters of refusal.");
                Assert.NotEmpty(refusal.Code);
                Assert.NotEmpty(refusal.Example);
                Assert.True(NamesThePlace(refusal.Message, text), $"{name}: '{refusal.Message}' does not say where in '{text}'.");
            },
            iter: Texts);

    /// <summary>Long texts of one piece are refused as quickly and shortly as a word.</summary>
    public static void MeetsPages(string name, Func<string, Refusal?> reader)
    {
        foreach (var piece in (string[])["1", "1 ", "1/", "(", "-", "205/65R15", ": ", "½"])
        {
            var refusal = reader(string.Concat(Enumerable.Repeat(piece, 100_000)));

            Assert.NotNull(refusal);
            Assert.True(refusal.Sentence.Length < 300, $"{name}: {refusal.Sentence.Length} characters of refusal.");
        }
    }

    /// <summary>The example given with a refusal is itself understood.</summary>
    public static void IsRightInItsExamples(Func<string, Refusal?> reader)
    {
        foreach (var text in (string[])["", "x", "0", "1000000", "-1", "1:2:3"])
        {
            if (reader(text) is not { } refusal) continue;

            // The tolerance's example lists three.
            foreach (var example in refusal.Example.Split(", ")) Assert.Null(reader(example));
        }
    }

    /// <summary>The piece that stopped the reader stands in quotation marks as it was typed; where a whole text is at fault, that one.</summary>
    private static bool NamesThePlace(string message, string text)
    {
        var typed = Bare(text);
        if (typed.Length == 0) return true;

        var marks = message.Index().Where(each => each.Item == '\'').Select(each => each.Index).ToList();
        return marks.Any(from => marks.Any(to => to > from && Bare(message[(from + 1)..to]) is { Length: > 0 } quoted && typed.Contains(quoted.TrimEnd('…'), StringComparison.Ordinal)));
    }

    // Refusals stand on one line: a break in the text may have become a space, and what has no shape stands as the sign for that.
    private static string Bare(string text) => string.Concat(text.EnumerateRunes().Where(rune => !Rune.IsWhiteSpace(rune)).Select(rune => Rune.GetUnicodeCategory(rune)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator ? Rune.ReplacementChar : rune));
}
