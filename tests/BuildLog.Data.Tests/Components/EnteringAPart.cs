using BuildLog.Data.Components;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Data.Tests.Components;

public sealed class EnteringAPart : IDisposable
{
    private readonly TestShop test = new();

    public void Dispose() => test.Dispose();

    [Fact]
    public void Keeps_every_kind_and_its_numbers_as_typed_over_a_restart()
    {
        Component[] entered =
        [
            test.Shop.Add(new EngineComponent { Name = "six", SerialNumber = "1", Idle = Noted.EngineSpeed("650 rpm", Source.Measured), Redline = Noted.EngineSpeed("4600", Source.MakersData) }),
            test.Shop.Add(new TransmissionComponent { Name = "box", Gears = TransmissionComponent.GearsFrom(Source.Tag, "3.54", "2,12", "1.00") }),
            test.Shop.Add(new OverdriveComponent { Name = "od", OverdriveRatio = Noted.Ratio("0.78 ± 0.01", RatioRange.Overdrive, Source.OwnersWord) }),
            test.Shop.Add(new TransferCaseComponent { Name = "case", High = Noted.Ratio("1.00", RatioRange.Transfer, Source.MakersData), Low = Noted.Ratio("2.32", RatioRange.Transfer, Source.MakersData) }),
            test.Shop.Add(new AxleComponent { Name = "axle", Teeth = new Teeth(43, 9), StatedRatio = Noted.Ratio("4.77", RatioRange.Axle, Source.Tag), HubReduction = Noted.Ratio("1.5", RatioRange.Hub, Source.MakersData) }),
            test.Shop.Add(new WheelSetComponent { Name = "tyres", SizeText = "P215/75 R 15", Worn = Noted.Length("5/32 in", Source.Measured), StatedCircumference = Noted.Length("82 1/4 in", Source.OwnersWord), Shelf = "rack", Donor = "yard", Notes = "n" }),
        ];
        test.Reopen();
        Assert.Equal(entered.Select(part => part.Name), test.Shop.Parts().Select(part => part.Component.Name));
        foreach (var (was, now) in entered.Zip(test.Shop.Parts()))
        {
            Assert.Equivalent(was, now.Component, strict: true);
            Assert.Null(now.Fitment);
        }

        var gears = ((TransmissionComponent)test.Shop.Parts()[1].Component).Gears;
        Assert.Equal(["3.54", "2,12", "1.00"], gears.Select(gear => gear.Ratio.Text));
        Assert.Equal(2.12, gears[1].Ratio.Si);
        Assert.Equal(43 / 9.0, ((AxleComponent)test.Shop.Parts()[4].Component).Teeth!.Value.Ratio);

        // 5/32 in = 0.15625 · 25.4 mm
        Assert.Equal(0.00396875, ((WheelSetComponent)test.Shop.Parts()[5].Component).Worn!.Si, 1e-12);
        Assert.Equal("in", ((WheelSetComponent)test.Shop.Parts()[5].Component).Worn!.Unit);
    }

    public static readonly TheoryData<Func<Component>, string> Impossible = new()
    {
        { () => new AxleComponent { Name = "" }, "The axle needs a name." },
        { () => new AxleComponent { Name = "a", StatedRatio = Noted.Ratio("47.7", RatioRange.Axle, Source.Tag) }, "'47.7' is no axle ratio: it lies between 1.5 and 12." },
        { () => new AxleComponent { Name = "a", StatedRatio = Noted.Ratio("0.82", RatioRange.Gear, Source.Tag) }, "'0.82' is no axle ratio: it lies between 1.5 and 12." },
        { () => new AxleComponent { Name = "a", Teeth = new Teeth(43, 2) }, "A gear has 4 to 200 teeth, not 43/2 (ring/pinion)." },
        { () => new OverdriveComponent { Name = "o", OverdriveRatio = Noted.Ratio("1.2", RatioRange.Overdrive, Source.Tag) }, "'1.2' is no overdrive ratio: it lies between 0.4 and 1." },
        { () => new TransmissionComponent { Name = "b", Gears = TransmissionComponent.GearsFrom(Source.Tag, "1.00", "2.00") }, "Gears stand from the lowest to the top: '2' (2.00) cannot follow '1' (1.00)." },
        { () => new TransferCaseComponent { Name = "t", High = Noted.Ratio("2.3", RatioRange.Transfer, Source.Tag), Low = Noted.Ratio("1", RatioRange.Transfer, Source.Tag) }, "The low range (1) must have the larger ratio, high is 2.3." },
        { () => new EngineComponent { Name = "e", Idle = Noted.EngineSpeed("5000", Source.Tag), Redline = Noted.EngineSpeed("800", Source.Tag) }, "The redline (800) must be above the idle speed (5000)." },
        { () => new EngineComponent { Name = "e", Idle = Noted.EngineSpeed("30 inn", Source.Tag) }, "'30 inn': the unit 'inn' is not known; for an engine speed use rev/min, rev/s." },
        { () => new WheelSetComponent { Name = "w", SizeText = "205/65X15" }, "'205/65X15' is no tyre size: after '205/65' R for radial, or '-' for bias is expected, not 'X15'." },
        { () => new WheelSetComponent { Name = "w", SizeText = "205/65-15" }, "'205/65-15' marks a bias tyre, not a radial one." },
        { () => new WheelSetComponent { Name = "w", StatedCircumference = Noted.Length("30 in", Source.OwnersWord) }, "'30 in' is no rolling circumference: road tyres cover 0.8 to 6 m a turn." },
        { () => new WheelSetComponent { Name = "w", SizeText = "205/65R15", Worn = Noted.Length("40 mm", Source.Measured) }, "'40 mm' is no tread depth: a tyre of this size wears by 0 to 16 mm." },
    };

    [Theory]
    [MemberData(nameof(Impossible))]
    public void The_impossible_is_refused_and_nothing_stored(Func<Component> part, string sentence)
    {
        var refused = Assert.Throws<RefusedException>(() => test.Shop.Add(part()));
        Assert.Equal(sentence, refused.Message);
        Assert.Empty(test.Shop.Parts());
    }

    [Fact]
    public void Gears_may_be_corrected()
    {
        var box = test.Gearbox("3.54", "2.12", "1.00");
        var before = box.Version;
        var corrected = test.Shop.Change(box, b => b.Gears = TransmissionComponent.GearsFrom(Source.Measured, "3.50", "2.00", "1.40", "1.00"));
        Assert.Equal(["3.50", "2.00", "1.40", "1.00"], ((TransmissionComponent)Assert.Single(test.Shop.Parts()).Component).Gears.Select(gear => gear.Ratio.Text));
        Assert.Equal(before + 1, corrected.Version);
        Assert.Equal(4L, test.Ask("SELECT count(*) FROM Gears"));
    }

    [Fact]
    public void A_bias_tyre_is_told_from_its_marking()
    {
        var bias = test.Shop.Add(new WheelSetComponent { Name = "w", SizeText = "165/80-15", Construction = Construction.Bias });
        Assert.Equal(Construction.Bias, bias.Size!.Construction);
    }
}
