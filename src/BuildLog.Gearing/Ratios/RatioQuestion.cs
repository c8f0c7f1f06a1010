using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Ratios;

/// <summary>Something to ask before a ratio is believed.</summary>
/// <param name="Asks">The question, as one would put it at the bench.</param>
/// <param name="Why">What makes one ask.</param>
/// <param name="Otherwise">The ratio it would be if the answer is yes; null where that hangs on a number nobody has.</param>
public sealed record RatioQuestion(string Asks, string Why, double? Otherwise)
{
    /// <summary>The question and what a yes would mean, such as <c>Did one wheel stand still? Then it is 3.90.</c></summary>
    public string InWords() => Otherwise is { } ratio ? Spoken($"{Asks} Then it is {Rounded.Fixed(ratio, 2)}.") : Asks;
}
