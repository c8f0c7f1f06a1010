using BuildLog.Data;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Parts;

/// <summary>How a form says that its numbers are known.</summary>
/// <param name="Now">What is chosen: it holds for whatever is typed.</param>
/// <param name="Was">What the form said before somebody chose otherwise: numbers known that way are known the new way, untouched as they are. Null for a first telling.</param>
public readonly record struct Telling(Source Now, Source? Was = null)
{
    private const string Id = "source";

    /// <summary>Asks how the numbers of a form are known: the owner's word until somebody says otherwise.</summary>
    internal static ChoiceEntry Entry(Source? now, string hint)
        => new(Id, Spoken("Known from"), [.. Sources.Select(source => new ChoiceOption(source.ToString(), source.InWords()))]) { Initial = (now ?? Source.OwnersWord).ToString(), Hint = hint };

    /// <summary>What was chosen.</summary>
    internal static Telling Of(FormValues values, Source? was) => new(Enum.Parse<Source>(values[Id]), was);

    private static IEnumerable<Source> Sources => [Source.OwnersWord, Source.Tag, Source.MakersData, Source.Measured, Source.Assumed];

    public static implicit operator Source(Telling telling) => telling.Now;

    public static implicit operator Telling(Source source) => new(source);

    /// <summary>Nothing is to be noted anew: the text stands as it was, and nobody says that it is known otherwise. A number of another source keeps that.</summary>
    public bool Leaves(Noted? known, string text) => known?.Text == text && (Was is null || Was == Now || known.Source != Was);

    /// <summary>A number, or null where nothing was typed.</summary>
    public Noted? Of(Noted? known, string text, Func<string, Noted> read) => text.Length == 0 ? null : Leaves(known, text) ? known : read(text);
}
