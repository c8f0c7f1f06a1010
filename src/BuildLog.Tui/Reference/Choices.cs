namespace BuildLog.Tui.Reference;

/// <summary>What may stand where a value is expected, told by how its name is written.</summary>
internal static class Choices
{
    /// <summary>The words of "a4|letter" or "owned,offered,listed"; none where the name is a stand-in such as "FILE".</summary>
    public static IReadOnlyList<string> Of(string takes)
        => takes.Length == 0 || takes.Any(char.IsUpper) ? [] : takes.Split('|', ',');

    public static bool IsFile(string takes) => takes is "PATH" || takes.StartsWith("FILE", StringComparison.Ordinal);
}
