namespace BuildLog.Tui.Forms;

/// <summary>A key that edits lines.</summary>
internal enum EditKey
{
    None,
    NewLine,
    Backspace,
    Delete,
    Up,
    Down,
    Left,
    Right,
    Home,
    End,
    All,
    EmptyLine,
    BringBack,
}

/// <summary>Lines of text with a cursor: the editing behind <see cref="LinesBox"/>.</summary>
internal sealed class LinesText(string initial)
{
    private readonly List<string> lines = [.. initial.Split('\n')];
    private string emptied = "";

    public IReadOnlyList<string> Lines => lines;

    public int Row { get; private set; }

    public int Column { get; private set; } = initial.Split('\n')[0].Length;

    /// <summary>Everything is marked: what is typed next replaces it.</summary>
    public bool IsAllMarked { get; private set; }

    public string Text => string.Join('\n', lines);

    public void MoveTo(int row, int column)
    {
        Row = Math.Clamp(row, 0, lines.Count - 1);
        Column = Math.Clamp(column, 0, lines[Row].Length);
    }

    public void Insert(string typed)
    {
        ReplaceMarked();
        lines[Row] = lines[Row].Insert(Column, typed);
        Column += typed.Length;
    }

    /// <returns>False when the key is not for the lines, such as Up in the first one: then it leaves the box.</returns>
    public bool Press(EditKey key)
    {
        if (key is EditKey.Backspace or EditKey.Delete && ReplaceMarked()) return true;
        if (key == EditKey.NewLine) ReplaceMarked();
        if (key != EditKey.None) IsAllMarked = key == EditKey.All;
        switch (key)
        {
            case EditKey.All:
                return true;
            case EditKey.EmptyLine:
                if (lines[Row].Length > 0) emptied = lines[Row];
                lines[Row] = "";
                MoveTo(Row, 0);
                return true;
            case EditKey.BringBack:
                lines[Row] += emptied;
                emptied = "";
                MoveTo(Row, int.MaxValue);
                return true;
            case EditKey.NewLine:
                lines.Insert(Row + 1, lines[Row][Column..]);
                lines[Row] = lines[Row][..Column];
                MoveTo(Row + 1, 0);
                return true;
            case EditKey.Backspace when Column > 0:
                lines[Row] = lines[Row].Remove(--Column, 1);
                return true;
            case EditKey.Backspace when Row > 0:
                JoinWithNext(Row - 1);
                return true;
            case EditKey.Delete when Column < lines[Row].Length:
                lines[Row] = lines[Row].Remove(Column, 1);
                return true;
            case EditKey.Delete when Row + 1 < lines.Count:
                JoinWithNext(Row);
                return true;
            case EditKey.Up when Row > 0:
                MoveTo(Row - 1, Column);
                return true;
            case EditKey.Down when Row + 1 < lines.Count:
                MoveTo(Row + 1, Column);
                return true;
            case EditKey.Left or EditKey.Right:
                MoveTo(Row, Column + (key == EditKey.Left ? -1 : 1));
                return true;
            case EditKey.Home or EditKey.End:
                MoveTo(Row, key == EditKey.Home ? 0 : int.MaxValue);
                return true;
            default:
                return key is EditKey.Backspace or EditKey.Delete;
        }
    }

    private bool ReplaceMarked()
    {
        if (!IsAllMarked) return false;
        IsAllMarked = false;
        lines.Clear();
        lines.Add("");
        MoveTo(0, 0);
        return true;
    }

    private void JoinWithNext(int row)
    {
        var seam = lines[row].Length;
        lines[row] += lines[row + 1];
        lines.RemoveAt(row + 1);
        MoveTo(row, seam);
    }
}
