using System.Text;

namespace BuildLog.Gearing.Languages;

/// <summary>One text and its translation; empty where there is none yet.</summary>
/// <param name="Text">The English text, values as {0}, {1}.</param>
/// <param name="Translation">The same in the other language.</param>
internal readonly record struct PoEntry(string Text, string Translation);

/// <summary>Reads catalogues in the PO format, as far as they use it: <c>msgid</c>, <c>msgstr</c>, texts over several lines, comments.</summary>
/// <remarks>Source: GNU gettext manual, "The Format of PO Files". The header entry, whose text is empty, is left out.</remarks>
internal static class PoFile
{
    public static IEnumerable<PoEntry> Read(TextReader reader)
    {
        StringBuilder text = new(), translation = new();
        var into = text;
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith("msgid ", StringComparison.Ordinal))
            {
                if (text.Length > 0) yield return new(text.ToString(), translation.ToString());
                text.Clear();
                translation.Clear();
                into = text;
            }
            else if (line.StartsWith("msgstr ", StringComparison.Ordinal))
            {
                into = translation;
            }

            if (!line.StartsWith('#')) Unquote(line, into);
        }

        if (text.Length > 0) yield return new(text.ToString(), translation.ToString());
    }

    // From the first quotation mark to the last.
    private static void Unquote(string line, StringBuilder into)
    {
        var (start, end) = (line.IndexOf('"', StringComparison.Ordinal), line.LastIndexOf('"'));
        for (var i = start + 1; i < end; i++)
        {
            into.Append(line[i] != '\\' || i + 1 == end ? line[i] : line[++i] switch
            {
                'n' => '\n',
                't' => '\t',
                var other => other,
            });
        }
    }
}
