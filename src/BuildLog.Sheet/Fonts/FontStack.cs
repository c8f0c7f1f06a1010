using System.Text;

namespace BuildLog.Sheet.Fonts;

/// <summary>A face and those that stand in for it where it lacks a sign.</summary>
internal sealed class FontStack(params IReadOnlyList<FontFace> faces)
{
    public FontFace Primary => faces[0];

    /// <summary>The text cut into pieces that one face can draw. A sign that none has stays with the first face.</summary>
    public IEnumerable<TextRun> Runs(string text)
    {
        FontFace? current = null;
        var (start, at) = (0, 0);
        foreach (var rune in text.EnumerateRunes())
        {
            var face = FaceFor(rune, after: current);
            if (current is not null && face != current)
            {
                yield return new TextRun(current, text[start..at]);
                start = at;
            }

            current = face;
            at += rune.Utf16SequenceLength;
        }

        if (current is not null) yield return new TextRun(current, text[start..]);
    }

    public double Width(string text, double size)
    {
        FontFace? current = null;
        var ems = 0.0;
        foreach (var rune in text.EnumerateRunes())
        {
            current = FaceFor(rune, after: current);
            ems += current.Advance(rune.Value);
        }

        return ems * size;
    }

    private FontFace FaceFor(Rune rune, FontFace? after)
    {
        // A space stays with the run before it: several words of signs are then one run, not one a word.
        if (rune.Value == ' ' && after is not null) return after;

        foreach (var face in faces)
            if (face.Has(rune.Value)) return face;

        return Primary;
    }
}

internal readonly record struct TextRun(FontFace Face, string Text);
