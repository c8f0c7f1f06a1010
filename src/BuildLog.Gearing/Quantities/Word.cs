namespace BuildLog.Gearing.Quantities;

/// <summary>One word of a short list, as it is typed.</summary>
internal static class Word
{
    /// <summary>The word, in large or small letters; never its number in the list: <c>1 450 kg</c> begins with no word.</summary>
    public static bool Of<T>(string text, out T word)
        where T : struct, Enum
        => Enum.TryParse(text, ignoreCase: true, out word) && Enum.IsDefined(word) && string.Equals(text, word.ToString(), StringComparison.OrdinalIgnoreCase);
}
