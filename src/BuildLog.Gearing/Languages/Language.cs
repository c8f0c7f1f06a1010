using System.Globalization;

namespace BuildLog.Gearing.Languages;

/// <summary>A language the program speaks: its words, and how it writes numbers and days.</summary>
public sealed class Language
{
    private static readonly AsyncLocal<Language?> Chosen = new();

    private readonly Lazy<Catalogue>? catalogue;

    private Language(string code, string tag, string name, CultureInfo culture, bool isWritten = false)
    {
        (Code, Tag, Name, Culture) = (code, tag, name, culture);
        if (!isWritten) catalogue = new(() => new Catalogue(code));
    }

    /// <summary>The language the program is written in; its numbers and days look the same on every machine.</summary>
    public static Language English { get; } = new("en", "en-GB", "English", CultureInfo.InvariantCulture, isWritten: true);

    /// <summary>The second language.</summary>
    public static Language Dutch { get; } = new("nl", "nl-NL", "Nederlands", Cultures.Dutch);

    /// <summary>All there are.</summary>
    public static IReadOnlyList<Language> All { get; } = [English, Dutch];

    /// <summary>What the whole program speaks where nobody asked for another; chosen once, at its start.</summary>
    public static Language Usual { get; set; } = English;

    /// <summary>What is spoken now, here.</summary>
    public static Language Spoken => Chosen.Value ?? Usual;

    /// <summary>The two letters it is asked for by, <c>nl</c>.</summary>
    public string Code { get; }

    /// <summary>With its country, as documents name the language they are in: <c>nl-NL</c>.</summary>
    public string Tag { get; }

    /// <summary>What its speakers call it.</summary>
    public string Name { get; }

    /// <summary>How it writes numbers and days.</summary>
    public CultureInfo Culture { get; }

    /// <summary>Whether the texts stand in the code as it says them: nothing has to be looked up.</summary>
    internal bool IsWritten => catalogue is null;

    /// <summary>The language of a code as people and machines write it: <c>nl</c>, <c>nl-BE</c>, <c>nl_NL.UTF-8</c>; null for one that is not spoken here.</summary>
    /// <param name="text">The code; <c>C</c> and <c>POSIX</c> are English.</param>
    public static Language? Read(string text)
    {
        var code = text.Trim();
        var end = code.IndexOfAny(['_', '-', '.', '@']);
        if (end >= 0) code = code[..end];
        if (code is "C" or "POSIX") return English;
        return All.FirstOrDefault(language => language.Code.Equals(code, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Speaks it until the scope ends, and in all that is called meanwhile; beside it, others speak on as they did.</summary>
    public IDisposable Speak()
    {
        var before = Chosen.Value;
        Chosen.Value = this;
        return new Scope(before);
    }

    /// <summary>A text of the code in this language; itself where it is not translated.</summary>
    internal string Of(string text) => catalogue is null ? text : catalogue.Value.Of(text);

    /// <inheritdoc/>
    public override string ToString() => Name;

    // While it lasts the language is spoken.
    private sealed class Scope(Language? before) : IDisposable
    {
        public void Dispose() => Chosen.Value = before;
    }
}
