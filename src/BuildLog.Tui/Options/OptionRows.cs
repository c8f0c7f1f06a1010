using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Options;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Options;

/// <summary>Ways out as rows, as they are told.</summary>
internal static class OptionRows
{
    private const int MostRows = 60;
    private static string Nothing => Spoken("Nothing that was searched makes it better than it is.");

    public static OptionsModel Of(WaysOut found, string searched, UnitSystem units)
    {
        var rows = Shown(found, MostRows).Select(each => Row(each.Option, each.Place, found, units));
        return new(
            [.. rows],
            OptionWords.Tried(found.Answer),
            [searched, .. OptionWords.MightBeBetter(found.Answer), OptionWords.AsItIs(found.Bench), .. found.Answer.Options.Any(option => OptionWords.Sure(option).Length > 0) ? (string[])[OptionWords.SureMeans] : [], WindowWords.Heading, .. found.Windows.Select(window => $"  {WindowWords.Of(window, units)}"), .. found.Answer.Exclusions.Select(exclusion => exclusion.InWords), .. OptionWords.PassedOver(found) is { Length: > 0 } passed ? (string[])[passed] : [], .. found.Unclear.Select(offer => Spoken($"Not searched, since the claim says no number: {offer}"))],
            Nothing)
        {
            Clashes = [.. OptionWords.Clashes(found, units)],
        };
    }

    /// <summary>The best options with the numbers they have in the whole list.</summary>
    public static IEnumerable<(Option Option, int Place)> Shown(WaysOut found, int most)
    {
        var best = found.Answer.Options.Take(most).ToHashSet(ReferenceEqualityComparer.Instance);
        return found.InOrder.Select((option, k) => (option, k + 1)).Where(each => best.Contains(each.option));
    }

    private static OptionRow Row(Option option, int place, WaysOut found, UnitSystem units)
    {
        var counts = FindingsWords.Count(option.Findings);
        return new(
            place,
            option.Changes,
            counts.Worst ?? Verdict.Open,
            counts.Each(),
            OptionWords.Parts(option),
            OptionWords.Short(option),
            option.CruiseEngineSpeed is { } n ? Rounded.WithInterval(n, Units.RevolutionPerMinute) : "",
            OptionWords.Cost(option, found.Currency),
            OptionWords.CostInShort(option, found.Currency),
            OptionWords.Sure(option),
            [.. option.Findings.Where(finding => finding.Verdict != Verdict.Fits).Select(finding => (finding.Verdict, finding.SaysIn(units.Shown)))])
        {
            Rejected = found.Before(option),
            IsOffered = option is { Gearbox.Pool: Pool.Offered } or { Overdrive.Pool: Pool.Offered } or { Axle.Pool: Pool.Offered } or { Tyres.Pool: Pool.Offered },
        };
    }
}
