using BuildLog.Gearing.Languages;

namespace BuildLog.Languages.Tests;

/// <summary>The texts of one project of the house in one language, as they lie in its source.</summary>
internal static class CatalogueFile
{
    /// <summary>Every language but the one the program is written in.</summary>
    public static IEnumerable<string> Languages => Language.All.Where(language => language != Language.English).Select(language => language.Code);

    public static string Path(string project, string language) => System.IO.Path.Combine(SourceOfProject.Folder(project), "Languages", language + ".po");

    /// <summary>What each text is in the language, empty where it is not translated yet; nothing for a language that has no catalogue yet.</summary>
    public static IReadOnlyDictionary<string, string> Of(string project, string language)
    {
        if (!File.Exists(Path(project, language))) return new Dictionary<string, string>();
        using var file = File.OpenText(Path(project, language));
        return PoFile.Read(file).ToDictionary(entry => entry.Text, entry => entry.Translation, StringComparer.Ordinal);
    }
}
