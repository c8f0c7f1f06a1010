namespace BuildLog.Tui.Options;

/// <summary>The comparisons people ask about, in their words.</summary>
/// <param name="Changes">What is put beside what is fitted, as <see cref="NamedChanges"/> reads it.</param>
/// <param name="Says">How it is asked.</param>
internal sealed record TradeOff(string Changes, string Says)
{
    public static IReadOnlyList<TradeOff> All =>
    [
        new("tyre-up,tyre-down", Spoken("One tyre size up or down: what it does to everything")),
        new("overdrive,axle", Spoken("An overdrive, or another axle?")),
        new("axle,launch", Spoken("An axle for the cruise, or one for pulling away?")),
        new("tyre-up,overdrive,axle", Spoken("Taller tyres, an overdrive, or another axle?")),
    ];
}
