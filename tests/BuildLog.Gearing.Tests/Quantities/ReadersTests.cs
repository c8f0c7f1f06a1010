using System.Globalization;
using System.Reflection;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;
using BuildLog.Gearing.Tyres;
using Xunit;

namespace BuildLog.Gearing.Tests.Quantities;

/// <summary>Whatever is typed, a reader answers with a value or with one sentence.</summary>
public sealed class ReadersTests
{
    public static TheoryData<string> Names => [.. EveryReader.Refusals.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_text_makes_a_reader_throw_and_every_refusal_is_one_short_line_that_names_the_place(string name)
        => AnyTyped.Meets(name, EveryReader.Refusals[name]);

    // A new reader that is not among these would never meet the texts above.
    [Fact]
    public void Every_public_reader_is_among_them()
    {
        var source = string.Concat(EveryReader.Source());
        var readers = typeof(QuantityText).Assembly.GetExportedTypes()
            .SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Static | BindingFlags.Instance | BindingFlags.DeclaredOnly))
            .Where(method => method.ReturnType is { IsGenericType: true } made && made.GetGenericTypeDefinition() == typeof(Parsed<>))
            .Where(method => method.GetParameters() is [{ ParameterType: { } first }, ..] && first == typeof(string))
            .Select(method => $"{method.DeclaringType!.Name}.{method.Name}(");

        Assert.All(readers.Distinct().Where(reader => reader is not ("RatioRange.Read(" or "Parsed`1.In(" or "Parsed`1.Showing(")), reader => Assert.Contains(reader, source, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_page_of_text_is_refused_as_quickly_as_a_word(string name) => AnyTyped.MeetsPages(name, EveryReader.Refusals[name]);

    // Turkish has a dotted capital I, German a decimal comma; neither is the reader's business.
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_machines_language_changes_nothing(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo(culture);

            Assert.Equal(20.5, TurnReading.Read("10:20.5", Wheels.OneHeld).OrRefuse().Propshaft);
            Assert.Equal(6.12, RollReading.Read("3:6,12 M").OrRefuse().Distance, 1e-12);
            Assert.Equal(240, TyreSizeText.Read("lt205/65zr15 94v xl tl").OrRefuse().SpeedLimitKmh);
            Assert.Equal(40, CruiseGoal.Read("110 KM/H", "2400 1/MIN", "AT MOST").OrRefuse().Wanted.High, 1e-12);
            Assert.Equal("4.1", Rounded.Exact(QuotedRatio.Read("4,10", RatioRange.Axle).OrRefuse().Ratio));
            Assert.Equal("'47.7' is no axle ratio: it lies between 1.5 and 12.", RatioRange.Axle.Read("47.7").Refusal!.Message);
            Assert.Contains("makes 0.204 m", RollReading.Read("1:204mm").Refusal!.Message, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void The_example_of_a_refusal_is_right(string name) => AnyTyped.IsRightInItsExamples(EveryReader.Refusals[name]);
}
