using BuildLog.Gearing.Tests.Published.Examples;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Every set of published figures, in the order of the README's table; each is computed when it is asked for.</summary>
/// <remarks>What is drawn a million times is left out where every change of the engine is held against the tests: see MUTATION.md.</remarks>
internal static class PublishedSets
{
    public static IReadOnlyList<Func<PublishedSet>> All { get; } =
    [
        NistLines.ThroughTheOrigin,
        NistLines.AboutTheMean,
        NistLines.Repeats,
        NistLines.Readings,
        TorqueThroughOrigin.Both,
        EndGauge.Calibration,
        Impedance.Simultaneous,
        Thermometer.Calibration,
        AdditiveModel.Sums,
        AdditiveModel.SumsFromMemory,
#if !MUTATION
        DrawnExamples.Sums,
        DrawnExamples.UnevenSumFromMemory,
        DrawnExamples.Mass,
        DrawnExamples.ComparisonLoss,
        DrawnExamples.ComparisonLossFromMemory,
        DrawnExamples.GaugeBlock,
#endif
        StudentTable.Factors,
        SmallExamples.Calculator,
        SmallExamples.Gum5,
        SmallExamples.Expansion,
        UnitFactors.Exact,
        UnitFactors.SpeedConstants,
        RatiosInPrint.Teeth,
        RatiosInPrint.TeethFromMemory,
        GearsInPrint.TwoStage,
        GearsInPrint.TwoPlanetary,
        TyreTables.Diameters,
        TyreTables.InchDiameters,
        TyreTables.FlotationDiameters,
        TyreTables.RollingCircumferences,
        TyreTables.LoadedFactorOfCars,
        TyreTables.InchDesign,
        TyreTables.LoadIndices,
        TyreTables.SpeedSymbols,
        TyreTables.SpeedSymbolsOfFastTyres,
        TyreTables.SpeedSymbolsFromMemory,
        TyreTables.MeasuringRims,
        WorkedSpeeds.Handbooks,
        WorkedSpeeds.MakersGuideFromMemory,
        WorkedSpeeds.TextbookFromMemory,
        WorkedSpeeds.CommonPractice,
        RoadLoadRows.Power,
        RoadLoadRows.CoastDown,
        Air.Constants,
        Air.TableFromMemory,
        Air.ByAnotherProgram,
        Air.Altitude,
        ShaftTables.CriticalSpeeds,
        ShaftTables.JointAngles,
        ShaftTables.PairsOfAngles,
        ShaftTables.JointSwing,
        SpeedometerTables.Law,
        SpeedometerTables.Errors,
        RunningGearTables.ChordFactors,
        RunningGearTables.BoltCircles,
        RunningGearTables.MatchLimits,
        RunningGearTables.TyreSpeeds,
        WorkedExamples.Printed,
        WorkedExamples.WorkedOut,
    ];
}
