using System.Collections.Concurrent;
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
    private const int Texts = 20_000;

    // A thousand times what the slowest takes: no measure of speed, but an end to what would never come back.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(2);
    private static readonly TimeSpan GivenUp = TimeSpan.FromSeconds(20);
    private static readonly TimeSpan Look = TimeSpan.FromSeconds(1);
    private const int Tries = 3;

    /// <summary>Twenty thousand texts: each is understood or refused in one short line that says where, and nothing escapes.</summary>
    public static void Meets(string name, Func<string, Refusal?> reader)
        => Watched(name, reading => AnyText.Of.Sample(
            text =>
            {
                if (reading.InTime(reader, text) is not { } refusal) return;

                Assert.False(refusal.Sentence.Any(char.IsControl), $"{name}: control characters in the refusal of a text.");
                Assert.True(refusal.Sentence.Length < 300, $"{name}: {refusal.Sentence.Length} characters of refusal.");
                Assert.NotEmpty(refusal.Code);
                Assert.NotEmpty(refusal.Example);
                Assert.True(NamesThePlace(refusal.Message, text), $"{name}: '{refusal.Message}' does not say where in '{text}'.");
            },
            iter: Texts));

    /// <summary>Long texts of one piece are refused as quickly and shortly as a word.</summary>
    public static void MeetsPages(string name, Func<string, Refusal?> reader) => Watched(name, reading =>
    {
        foreach (var piece in (string[])["1", "1 ", "1/", "(", "-", "205/65R15", ": ", "½"])
        {
            var refusal = reading.InTime(reader, string.Concat(Enumerable.Repeat(piece, 100_000)));

            Assert.NotNull(refusal);
            Assert.True(refusal.Sentence.Length < 300, $"{name}: {refusal.Sentence.Length} characters of refusal.");
        }
    });

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

    // Beside the readings stands somebody with a watch: a reader that never comes back would never be measured.
    internal static void Watched(string name, Action<Readings> read, TimeProvider? clock = null)
    {
        var readings = new Readings(name, clock ?? TimeProvider.System);
        var reading = Task.Factory.StartNew(() => read(readings), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
        while (Task.WaitAny([reading], Look) < 0)
        {
            if (readings.Unanswered(GivenUp) is { } text) Assert.Fail($"{name} does not come back from {Shown.Quoted(text)} ({text.Length} characters).");
        }

        reading.GetAwaiter().GetResult();
    }

    /// <summary>Texts given to a reader, each with the time it has been read for.</summary>
    internal sealed class Readings(string name, TimeProvider clock)
    {
        private readonly ConcurrentDictionary<int, (string Text, long Since)> open = new();

        /// <summary>What the reader says, within two seconds in one of three tries: a machine that is busy once is no slow reader.</summary>
        public Refusal? InTime(Func<string, Refusal?> reader, string text)
        {
            for (var left = Tries; ; left--)
            {
                var since = clock.GetTimestamp();
                open[Environment.CurrentManagedThreadId] = (text, since);
                var refusal = reader(text);
                _ = open.TryRemove(Environment.CurrentManagedThreadId, out _);
                if (clock.GetElapsedTime(since) <= Longest) return refusal;

                Assert.True(left > 1, $"{name} takes more than {Longest.TotalSeconds} s for {Shown.Quoted(text)} ({text.Length} characters).");
            }
        }

        /// <summary>A text that has been read for so long; null where there is none.</summary>
        public string? Unanswered(TimeSpan longest) => open.Values.FirstOrDefault(each => clock.GetElapsedTime(each.Since) > longest).Text;
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
