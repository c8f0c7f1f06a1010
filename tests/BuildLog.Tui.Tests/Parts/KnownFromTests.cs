using BuildLog.Data;
using BuildLog.Data.Components;
using BuildLog.Data.Specs;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Tui.Forms;
using BuildLog.Tui.Parts;

namespace BuildLog.Tui.Tests.Parts;

/// <summary>What a part's form says of how its numbers are known.</summary>
public sealed class KnownFromTests
{
    private readonly EngineComponent engine = new();

    public KnownFromTests() => Apply(Source.OwnersWord, ("part", "six"), ("redline", "4600 rpm"), ("PeakTorque", "210 Nm"));

    [Fact]
    public void A_wrong_source_is_corrected_without_typing_its_numbers_again()
    {
        Apply(Source.MakersData);

        Assert.Equal((Source.MakersData, Source.MakersData), (engine.Redline!.Source, engine.PeakTorque!.Source));
    }

    [Fact]
    public void A_number_of_another_source_keeps_it()
    {
        engine.PeakTorque = Noted.Of(Spec.PeakTorque.Line(), "205 Nm", Source.Measured);

        Apply(Source.MakersData);

        Assert.Equal((Source.MakersData, Source.Measured), (engine.Redline!.Source, engine.PeakTorque!.Source));
    }

    [Fact]
    public void What_is_typed_is_known_as_the_form_says_and_the_rest_as_it_was()
    {
        Apply(Source.OwnersWord, ("idle", "800 rpm"));

        Assert.Equal((Source.OwnersWord, "4600 rpm"), (engine.Redline!.Source, engine.Redline.Text));
        Assert.Equal(Source.OwnersWord, engine.Idle!.Source);
    }

    [Fact]
    public void A_form_opened_again_says_how_its_numbers_are_known()
    {
        var wheels = new WheelSetComponent { RimWidth = Noted.Of(Spec.RimWidth.Line(), "6 in", Source.Measured) };
        Assert.Equal(nameof(Source.Measured), SaidOf(wheels));

        Assert.Equal(nameof(Source.Tag), SaidOf(new WheelSetComponent { SizeText = "205/65R15" }));
        Assert.Equal(nameof(Source.OwnersWord), SaidOf(new WheelSetComponent()));
    }

    private static string SaidOf(WheelSetComponent wheels) => PartEntries.For(Position.Tyres).Entries(wheels).Single(entry => entry.Id == "source").Initial;

    private void Apply(Source source, params (string Entry, string Text)[] typed)
    {
        var entries = PartEntries.For(Position.Engine);
        var texts = entries.Entries(engine).ToDictionary(entry => entry.Id, entry => entry.Initial, StringComparer.Ordinal);
        foreach (var (entry, text) in typed) texts[entry] = text;
        texts["source"] = source.ToString();
        entries.Apply(new FormValues(texts), engine);
    }
}
