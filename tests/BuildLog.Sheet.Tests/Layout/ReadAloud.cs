using BuildLog.Sheet.Drawing;

namespace BuildLog.Sheet.Tests.Layout;

/// <summary>What a screen reader says: all texts that are not decoration.</summary>
internal static class ReadAloud
{
    public static List<string> TextsOf(IEnumerable<Operation> operations)
    {
        var texts = new List<string>();
        var decoration = 0;
        foreach (var operation in operations)
        {
            if (operation is BeginTag { Info.Tag: Tag.Artifact } || (decoration > 0 && operation is BeginTag)) decoration++;
            else if (operation is EndTag && decoration > 0) decoration--;
            else if (operation is DrawText text && decoration == 0) texts.Add(text.Text);
        }

        return texts;
    }
}
