using System.Globalization;
using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet;

/// <summary>A sign that none of the sheet's fonts has; an empty box was printed in its place.</summary>
/// <param name="Sign">The sign itself.</param>
/// <param name="CodePoint">Its number: "U+1F6FB".</param>
/// <param name="Page">The first page it stands on.</param>
public sealed record MissingSign(string Sign, string CodePoint, int Page)
{
    internal static IReadOnlyList<MissingSign> In(DrawnDocument document)
    {
        var found = new Dictionary<string, MissingSign>();
        foreach (var (i, page) in document.Pages.Index())
            foreach (var text in page.Operations.OfType<DrawText>())
                foreach (var rune in text.Text.EnumerateRunes().Where(rune => !text.Face.Has(rune.Value)))
                    found.TryAdd(rune.ToString(), new MissingSign(rune.ToString(), CodePointOf(rune.Value), i + 1));

        return [.. found.Values];
    }

    private static string CodePointOf(int value) => string.Create(CultureInfo.InvariantCulture, $"U+{value:X4}");
}
