namespace BuildLog.Gearing.Languages;

/// <summary>Text for people, in the language spoken. The English text in the code is also the name by which its translation is found.</summary>
public static class Words
{
    /// <summary>A text without values.</summary>
    public static string Spoken(string text) => Language.Spoken.Of(text);

    /// <summary>A text with values, <c>Spoken($"rolled out: {shown}")</c>: looked up as <c>rolled out: {0}</c>, and its values put where the language wants them.</summary>
    /// <param name="text">Made by the compiler of an interpolated text.</param>
    public static string Spoken(ref SpokenText text) => text.ToText();
}
