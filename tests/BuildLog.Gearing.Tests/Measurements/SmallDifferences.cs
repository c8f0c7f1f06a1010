using BuildLog.Gearing.Measurements;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

/// <summary>A second route for any sensitivity, sign included: the law asked a little to either side.</summary>
internal static class SmallDifferences
{
    private const double Step = 1e-5;

    public static void Agree(Func<Measured, Measured> law, double at)
    {
        var input = new Input("input", 1, new Evidence("bench"));
        var step = Step * Math.Max(Math.Abs(at), 0.01);
        var slope = (law(at + step).Value - law(at - step).Value) / (2 * step);

        Assert.Equal(slope, law(Measured.From(at, input)).SensitivityTo(input), (1e-4 * Math.Abs(slope)) + 1e-7);
    }
}
