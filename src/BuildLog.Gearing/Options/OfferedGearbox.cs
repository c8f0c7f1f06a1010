using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.Options;

/// <summary>A gearbox on offer: the gears that its seller tells, those that were counted, and that it has others of which nobody told.</summary>
/// <remarks>It is another box than the fitted one however little is told of it: neither what it bolts to nor any gear is taken over from that.</remarks>
internal static class OfferedGearbox
{
    public static Parsed<Transmission> Of(Claim claim, string name)
    {
        var read = ToldGears.Read(claim.Said);
        if (claim.IsWordAlone) return read.Then(told => Box(name, told.Among([]), told.AreAll, told.IsTopAlone));

        var said = read.Understood(out var each) ? each : null;
        return ToldGears.Read(claim.Counted).Then(counted => Counted(name, said, counted));
    }

    private static Parsed<Transmission> Counted(string name, ToldGears? said, ToldGears counted)
    {
        var word = said?.Among([]) ?? [];

        // Of a top gear that the seller gives no name, and of one that was counted without it, the other's name is its.
        var isTopOfBoth = said?.Top is not null && counted.Top is not null && (said.IsTopAlone || counted.IsTopAlone);
        var others = isTopOfBoth ? [.. word.SkipLast(1)] : word;
        var gears = counted.IsTopAlone ? [.. others, .. counted.Among([])] : counted.Among(others);
        if (isTopOfBoth && counted.IsTopAlone) gears = [.. gears.SkipLast(1), gears[^1] with { Name = word[^1].Name }];

        Known? Said(Gear gear) => (isTopOfBoth && gear == gears[^1] ? word[^1] : word.FirstOrDefault(same => same.Name == gear.Name))?.Ratio;
        return Box(
            name, [.. gears.Select(gear => counted.Tells(gear) ? gear with { Ratio = ToldPart.AsCounted(gear.Ratio), Quoted = Said(gear) } : gear)],
            counted.AreAll || said is { AreAll: true }, isTopNameless: counted.IsTopAlone ? !isTopOfBoth || said!.IsTopAlone : said is { IsTopAlone: true } && !isTopOfBoth);
    }

    private static Parsed<Transmission> Box(string name, IReadOnlyList<Gear> gears, bool areAll, bool isTopNameless)
        => gears.Count > 1 && gears[^1].Ratio.Value.Value >= gears[^2].Ratio.Value.Value
            ? ToldGears.CannotFollow(gears[^1].Ratio.Says, gears[^2].Ratio.Value.Value)
            : new Transmission(name, gears) { Untold = areAll ? null : Untold(gears, isTopNameless) };

    private static UntoldGears? Untold(IReadOnlyList<Gear> gears, bool isTopNameless)
    {
        // Below a top gear without a name there are others, nobody knows how many.
        if (isTopNameless) return new([], First: gears.Count == 1 || UntoldGears.Between([.. gears.SkipLast(1)]) is { First: true }, Top: false) { IsTopNameless = true };

        // Neither does anybody where the top gear's name does not count them.
        var (between, isTopTold) = (UntoldGears.Between(gears), gears[^1].Ratio.Value.Value <= ToldGears.ShortestTop);
        var isCounted = UntoldGears.IsNumbered(gears[^1]) || !gears.Any(UntoldGears.IsNumbered);
        return isTopTold && !isCounted ? new([], between is { First: true }, false)
            : between is null && isTopTold && gears.Count > 1 ? null : new(between?.Names ?? [], between?.First ?? (isTopTold && gears.Count == 1), !isTopTold);
    }
}
