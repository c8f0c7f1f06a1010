using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>What the tests of single checks share.</summary>
internal static class CheckCase
{
    public static readonly OwnersGoals NoGoals = OwnersGoals.None;

    public static OwnersGoals Cruise(string speed, string engineSpeed, string gear = "") => new([CruiseGoal.Read(speed, engineSpeed, "", gear).OrRefuse()]);

    public static Known Known(Measured value, Source source = Source.MakersData) => new(value, source);
}
