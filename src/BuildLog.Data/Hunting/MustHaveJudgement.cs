using System.Text.RegularExpressions;
using BuildLog.Gearing.Checks;

namespace BuildLog.Data.Hunting;

/// <summary>What an offer tells of something that the part must have.</summary>
/// <param name="Must">What it must have.</param>
/// <param name="Told">What is told of it; empty for nothing.</param>
/// <param name="Verdict">Fits where it is told so, clash where something else is told, watch where it is to be asked or measured.</param>
public sealed partial record MustHaveJudgement(MustHave Must, string Told, Verdict Verdict)
{
    // Different things are told only in the form in which they are wanted, "bolt circle: 5 × 108": free words about it are for a person to read.
    internal static MustHaveJudgement Of(MustHave must, string told)
    {
        if (Plain(told).Contains(Plain(must.Text), StringComparison.Ordinal)) return new(must, must.Text, Verdict.Fits);

        var line = Lines().Split(told).Select(each => each.Trim().TrimEnd('.')).FirstOrDefault(each => each.StartsWith($"{must.What}:", StringComparison.OrdinalIgnoreCase));
        return line?[(must.What.Length + 1)..].Trim() is { Length: > 0 } other ? new(must, other, Verdict.Clash) : new(must, "", Verdict.Watch);
    }

    [GeneratedRegex(@"\n|;|,\s|\.\s")]
    private static partial Regex Lines();

    // "5x114.3" is "5 × 114.3".
    private static string Plain(string text) => string.Concat(text.Where(sign => !char.IsWhiteSpace(sign))).Replace('×', 'x').ToUpperInvariant();
}
