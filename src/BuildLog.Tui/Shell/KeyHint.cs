namespace BuildLog.Tui.Shell;

/// <summary>A key and what it does, as the line of keys says it.</summary>
internal sealed record KeyHint(string Key, string Does);
