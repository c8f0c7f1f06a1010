using System.Globalization;
using System.Text;
using BuildLog.Gearing.Quantities;
using CsCheck;
using Assert = Xunit.Assert;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>What is asked of a reader that meets whatever can be typed. The tests of the other houses' readers share it.</summary>
/// <remarks>Other texts each run, so that a year of runs sees more than one: the failure names its seed, and <c>CsCheck_Seed=SEED dotnet test …</c> plays it again.</remarks>
internal static class AnyTyped
{
    private const int Texts = 100_000;

    /// <summary>A hundred thousand texts: each is understood or refused in one short line that says where, and nothing escapes.</summary>
    public static void Meets(string name, Func<string, Refusal?> reader)
        => AnyText.Of.Sample(
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
