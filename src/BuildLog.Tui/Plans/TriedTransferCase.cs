using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Tui.Plans;

/// <summary>Another ratio of either range: <c>high 1.00; low 2.48</c>. A bare ratio is the high one's.</summary>
internal static class TriedTransferCase
{
    private const string High = "high";
    private const string Low = "low";
    private const string Example = "high 1.00; low 2.48";

    public static Parsed<TransferCase> Read(string text, string name, TransferCase? fitted)
    {
        var numbers = NamedNumbers.Parted(text).Select(number => char.IsDigit(number[0]) ? $"{High} {number}" : number);
        return NamedNumbers.Read(string.Join(NamedNumbers.Between, numbers), Spoken("the transfer case"), [High, Low], Example)
            .Then(typed => Parsed.From(() => With(fitted ?? new(name, null, null), typed)));
    }

    private static TransferCase With(TransferCase box, IReadOnlyDictionary<string, string> typed)
    {
        if (typed.TryGetValue(High, out var high)) box = box with { High = Told(QuotedRatio.Read(high, RatioRange.Transfer).OrRefuse(), High) };
        if (typed.TryGetValue(Low, out var low)) box = box with { Low = Told(TransferCaseLow.Read(low).OrRefuse(), Low) };
        return box is { High.Value.Value: var up, Low.Value.Value: var down } && down <= up
            ? throw new RefusedException("transfer", Spoken($"The low range ({Rounded.Exact(down)}) must have the larger ratio, high is {Rounded.Exact(up)}."), Example)
            : box;
    }

    private static Known Told(QuotedRatio ratio, string range) => new(ratio.ToMeasured(Spoken($"transfer case {range}")), Source.OwnersWord, ratio.InWords);
}
