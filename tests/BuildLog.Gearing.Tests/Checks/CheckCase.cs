using BuildLog.Gearing.Checks;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Measurements;
using Xunit;

namespace BuildLog.Gearing.Tests.Checks;

/// <summary>What the tests of single checks share.</summary>
internal static class CheckCase
{
    public static readonly OwnersGoals NoGoals = OwnersGoals.None;

    public static OwnersGoals Cruise(string speed, string engineSpeed, string gear = "") => new([CruiseGoal.Read(speed, engineSpeed, "", gear).OrRefuse()]);

    public static Known Known(Measured value, Source source = Source.MakersData) => new(value, source);

    public static List<Finding> Look(ICheck check, Driveline driveline, OwnersGoals? goals = null) => [.. check.Look(driveline, goals ?? NoGoals)];

    /// <summary>The one finding of a check.</summary>
    public static Finding Find(ICheck check, Driveline driveline, OwnersGoals? goals = null) => Assert.Single(check.Look(driveline, goals ?? NoGoals));
}
