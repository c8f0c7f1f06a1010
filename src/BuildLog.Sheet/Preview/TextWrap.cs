namespace BuildLog.Sheet.Preview;

/// <summary>Breaks text into lines of a number of signs, at spaces, and inside a word only when it alone is too long.</summary>
internal static class TextWrap
{
    public static IEnumerable<string> Lines(string text, int width, string first = "", string further = "")
    {
        var indent = first;
        foreach (var paragraph in text.Split('\n'))
        {
            var rest = paragraph.Trim();
            do
            {
                var room = Math.Max(1, width - indent.Length);
                var cut = rest.Length <= room ? rest.Length : CutAt(rest, room);
                yield return (indent + rest[..cut]).TrimEnd();

                rest = rest[cut..].TrimStart();
                indent = further;
            }
            while (rest.Length > 0);
        }
    }

    private static int CutAt(string text, int room)
    {
        var space = text.LastIndexOf(' ', room, room + 1);
        if (space > 0) return space;

        return room > 1 && char.IsHighSurrogate(text[room - 1]) ? room - 1 : room;
    }
}
