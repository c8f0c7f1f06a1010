using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Tyres.Notations;

/// <summary>One way of marking a tyre's size. One notation is one file; <see cref="TyreSizeText"/> names it.</summary>
internal interface ITyreNotation
{
    /// <summary>A marking that is right.</summary>
    string Example { get; }

    /// <summary>The size, or where and why reading stopped; the marking remembers how far it came.</summary>
    Parsed<TyreSize> Read(Marking marking);
}
