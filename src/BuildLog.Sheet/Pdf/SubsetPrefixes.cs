using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace BuildLog.Sheet.Pdf;

/// <summary>Replaces the random letters before a subset font's name by letters that follow from the name and its order.</summary>
internal sealed partial class SubsetPrefixes
{
    private const int LettersInPrefix = 6;

    private readonly Dictionary<string, string> fixedFor = [];

    public ReadOnlyMemory<byte> Fix(ReadOnlyMemory<byte> value)
    {
        // Only fonts and their descriptors: elsewhere the pattern could stand in somebody's text.
        if (value.Span.IndexOf("/FontName"u8) < 0 && value.Span.IndexOf("/BaseFont"u8) < 0) return value;

        return PdfSyntax.Bytes(Prefixed().Replace(
            PdfSyntax.Text(value),
            match => $"/{PrefixFor(match.Groups[1].Value, match.Groups[2].Value)}+{match.Groups[2].Value}"));
    }

    private string PrefixFor(string random, string fontName)
    {
        if (!fixedFor.TryGetValue(random, out var prefix))
        {
            var hash = SHA256.HashData(Encoding.ASCII.GetBytes($"{fontName}#{fixedFor.Count}"));
            fixedFor[random] = prefix = string.Concat(hash.Take(LettersInPrefix).Select(b => (char)('A' + b % 26)));
        }

        return prefix;
    }

    [GeneratedRegex(@"/([A-Z]{6})\+([^\s/<>\[\]()]+)")]
    private static partial Regex Prefixed();
}
