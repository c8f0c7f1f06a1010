namespace BuildLog.Gearing.Measurements;

/// <summary>How a number is known, the most trustworthy first.</summary>
public enum Source
{
    /// <summary>Teeth counted: exact.</summary>
    TeethCounted,
    /// <summary>Measured on the part.</summary>
    Measured,
    /// <summary>A maker's data sheet or table.</summary>
    MakersData,
    /// <summary>A tag or stamping, which may have outlived the gears.</summary>
    Tag,
    /// <summary>What a seller or an owner says.</summary>
    OwnersWord,
    /// <summary>Nobody said it: usual for such a part.</summary>
    Assumed,
}

/// <summary>A value and how it is known.</summary>
/// <param name="Value">The value with its uncertainty.</param>
/// <param name="Source">How it is known.</param>
/// <param name="Says">The evidence in a few words, such as <c>43/9</c> or <c>count of 3 May 2026</c>; may be empty.</param>
public sealed record Known(Measured Value, Source Source, string Says = "");

/// <summary>Sources as the trade says them.</summary>
public static class SourceWords
{
    /// <summary>Such as <c>tag or stamping</c>.</summary>
    public static string InWords(this Source source) => source switch
    {
        Source.TeethCounted => Spoken("teeth counted"),
        Source.Measured => Spoken("measured"),
        Source.MakersData => Spoken("maker's data"),
        Source.Tag => Spoken("tag or stamping"),
        Source.OwnersWord => Spoken("owner's word"),
        Source.Assumed => Spoken("assumed"),
        _ => throw new ArgumentOutOfRangeException(nameof(source), source, "No such source."),
    };
}
