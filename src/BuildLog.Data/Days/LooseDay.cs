using BuildLog.Gearing.Quantities;

namespace BuildLog.Data.Days;

/// <summary>A day that may not be known to the day: the text as typed, and what it leaves open.</summary>
public sealed record LooseDay
{
    internal LooseDay(string text, DateOnly? earliest, DateOnly? latest) => (Text, Earliest, Latest) = (text, earliest, latest);

    public string Text { get; private init; }

    /// <summary>The first day it can have been; null where nothing says so.</summary>
    public DateOnly? Earliest { get; private init; }

    /// <summary>The last day it can have been; null where nothing says so.</summary>
    public DateOnly? Latest { get; private init; }

    public bool IsExact => Earliest is not null && Earliest == Latest;

    /// <summary><c>3 May 2026</c> for a day that is known, otherwise the text as typed.</summary>
    public string InWords => IsExact ? Earliest!.Value.InWords() : Text;

    public static LooseDay On(DateOnly day) => new(FormattableString.Invariant($"{day:O}"), day, day);

    /// <summary>The same of what may not have been yet: null for null.</summary>
    public static LooseDay? OnIfAny(DateOnly? day) => day is { } known ? On(known) : null;

    /// <summary>Reads <c>3 May 2026</c>, <c>spring 2024</c>, <c>about 2019</c>, <c>before May 2023</c>; empty text is no day.</summary>
    /// <exception cref="RefusedException">The text is no day.</exception>
    public static LooseDay? Read(string text) => string.IsNullOrWhiteSpace(text) ? null : LooseDayText.Read(text).OrRefuse();

    /// <summary>Whatever day it was, it lies from the one day to the other.</summary>
    public bool LiesWithin(DateOnly first, DateOnly last) => Earliest >= first && Latest <= last;

    /// <summary>It can have been before that day, and that day or later as well: it does not say on which side of a swap it was.</summary>
    public bool Straddles(DateOnly day) => !(Earliest >= day) && !(Latest < day);

    /// <summary>The same of what has been: <c>2026</c>, said in May, ends in May. One that is quite open stays so.</summary>
    public LooseDay NotAfter(DateOnly last) => Earliest is null || Latest <= last ? this : this with { Latest = last };

    public override string ToString() => Text;
}
