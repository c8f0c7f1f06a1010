namespace BuildLog.Gearing.Measurements;

/// <summary>How a number is known, the most trustworthy first.</summary>
public enum Source
{
    TeethCounted,
    Measured,
    MakersData,
    Tag,
    OwnersWord,
    Assumed,
}

/// <summary>A value and how it is known.</summary>
/// <param name="Value">The value with its uncertainty.</param>
/// <param name="Source">How it is known.</param>
/// <param name="Says">The evidence in a few words, such as <c>43/9</c> or <c>count of 3 May 2026</c>; may be empty.</param>
public sealed record Known(Measured Value, Source Source, string Says = "");

public static class SourceWords
{
    public static string InWords(this Source source) => source switch
    {
        Source.TeethCounted => "teeth counted",
        Source.Measured => "measured",
        Source.MakersData => "maker's data",
        Source.Tag => "tag or stamping",
        Source.OwnersWord => "owner's word",
        Source.Assumed => "assumed",
        _ => throw new ArgumentOutOfRangeException(nameof(source), source, "No such source."),
    };
}
