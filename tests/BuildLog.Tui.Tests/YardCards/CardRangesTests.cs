using System.Globalization;
using BuildLog.Data.Hunting;
using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;
using BuildLog.Gearing.YardCards;
using BuildLog.Tui.YardCards;
using CsCheck;

namespace BuildLog.Tui.Tests.YardCards;

/// <summary>What the card says of a result and what is judged of it are the same; both sides go their own way to it.</summary>
public sealed class CardRangesTests
{
    private static readonly Gen<Window> AnyRatios = Gen.Select(Gen.Int[220, 550], Gen.Int[0, 80], (low, width) => new Window(low / 100.0, (low + width) / 100.0));
    private static readonly Gen<Window> AnyCircumferences = Gen.Select(Gen.Int[1500, 2900], Gen.Int[0, 250], (low, width) => new Window(low / 1000.0, (low + width) / 1000.0));

    [Fact]
    public void A_count_means_on_the_card_what_is_judged_of_it()
        => Gen.Select(AnyRatios, Gen.Bool, Gen.Bool).Sample((window, isHeld, isMore) =>
        {
            var (wheels, turns) = (isHeld ? Wheels.OneHeld : Wheels.Together, isMore ? AxleCard.MoreWheelTurns : AxleCard.WheelTurns);
            var edges = CountEdges.Of(window, window, turns, wheels, new());
            var range = CardRanges.OfTurns("", edges.Yes, edges.Possible);
            foreach (var counted in Steps(edges.Possible, 1, 0.25))
            {
                var ratio = Counted(turns, counted, wheels);
                Assert.Equal(Verdicts.Judge(ratio, window).Verdict, OnTheCard(range.Yes, range.No, counted));
            }
        });

    [Fact]
    public void A_roll_means_on_the_card_what_is_judged_of_it()
        => Gen.Select(AnyCircumferences, Gen.Bool, Gen.Bool).Sample((window, loaded, isMore) =>
        {
            var turns = isMore ? TyreCard.MoreTurns : TyreCard.Turns;
            var how = new RollOutPrecision(loaded, Construction.Radial);
            var edges = RollEdges.Of(window, window, turns, how);
            var range = CardRanges.OfLength("", Units.Metre, edges.Yes, edges.Possible);
            foreach (var rolled in Steps(edges.Possible, 0.05, 0.001))
            {
                var circumference = RollOut.Of([RollReading.Read(FormattableString.Invariant($"{turns}:{rolled:0.000}m")).OrRefuse()], how).RollingCircumference;
                Assert.Equal(Verdicts.Judge(circumference, window).Verdict, OnTheCard(range.Yes, range.No, rolled));
            }
        });

    // The claim has three places; where its interval ends within their rounding of an edge either is right.
    [Fact]
    public void The_claim_of_a_count_is_judged_as_the_card_says()
        => Gen.Select(AnyRatios, Gen.Int[40, 220]).Sample((window, quarters) =>
        {
            var counted = quarters / 4.0;
            var edges = CountEdges.Of(window, window, AxleCard.WheelTurns, Wheels.OneHeld, new());
            var range = CardRanges.OfTurns("", edges.Yes, edges.Possible);
            var ratio = Counted(AxleCard.WheelTurns, counted, Wheels.OneHeld);
            if (((double[])[ratio.Interval95.Low, ratio.Interval95.High]).Any(end => Math.Abs(end - window.Low) < 0.0015 || Math.Abs(end - window.High) < 0.0015)) return;

            var hunted = new WantedPart(new(), WantedKind.Axle) { Windows = [new(WindowOf.AxleRatio, Text(window.Low), Text(window.High))] };
            Assert.Equal(OfferJudgement.Of(hunted, FormattableString.Invariant($"{ratio.Value:0.000}±{ratio.Expanded95:0.000}"), null).Verdict, OnTheCard(range.Yes, range.No, counted));
        });

    [Fact]
    public void Inches_stand_on_the_card_as_on_the_tape()
    {
        var range = CardRanges.OfLength("", Units.Inch, new(6.05, 6.10), new(6.00, 6.15));

        // 6.05 m is 238.19 in, 6.10 m is 240.16 in, 6.00 m is 236.22 in, 6.15 m is 242.13 in.
        Assert.Equal("238 1/4 to 240 1/8 in", range.Yes);
        Assert.Equal("under 236 1/4, over 242 1/8 in", range.No);
    }

    private static Measured Counted(int turns, double propshaft, Wheels wheels)
        => TurnCount.Of([TurnReading.Read(FormattableString.Invariant($"{turns}:{propshaft}"), wheels).OrRefuse()], new()).Ratio;

    private static string Text(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    private static IEnumerable<double> Steps(Window possible, double margin, double step)
        => Enumerable.Range((int)Math.Floor((possible.Low - margin) / step), (int)Math.Ceiling((possible.High - possible.Low + (2 * margin)) / step) + 1).Select(k => k * step);

    private static Verdict OnTheCard(string? yes, string no, double read)
    {
        var limits = Numbers(no);
        if (read < limits[0] - 1e-9 || read > limits[1] + 1e-9) return Verdict.Clash;

        return yes is null || Numbers(yes) is not [var from, ..] sure || read < from - 1e-9 || read > sure[^1] + 1e-9 ? Verdict.Watch : Verdict.Fits;
    }

    private static List<double> Numbers(string words)
        => [.. words.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries).Where(word => char.IsDigit(word[0])).Select(word => double.Parse(word, CultureInfo.InvariantCulture))];
}
