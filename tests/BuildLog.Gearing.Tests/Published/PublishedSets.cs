namespace BuildLog.Gearing.Tests.Published;

/// <summary>Every set of published figures, in the order of the README's table.</summary>
internal static class PublishedSets
{
    public static IReadOnlyList<PublishedSet> All { get; } =
    [
        NistLines.ThroughTheOrigin(),
        NistLines.AboutTheMean(),
        TorqueThroughOrigin.Both(),
        EndGauge.Calibration(),
        Thermometer.Calibration(),
        AdditiveModel.Sums(),
        AdditiveModel.SumsFromMemory(),
        StudentTable.Factors(),
        SmallExamples.Calculator(),
        SmallExamples.Gum5(),
        SmallExamples.Expansion(),
        UnitFactors.Exact(),
        UnitFactors.SpeedConstants(),
        RatiosInPrint.Teeth(),
        RatiosInPrint.TeethFromMemory(),
        RatiosInPrint.Turns(),
        RatiosInPrint.Products(),
        GearsInPrint.TwoStage(),
        GearsInPrint.Splines(),
        GearsInPrint.TwoPlanetary(),
        TyreTables.Diameters(),
        TyreTables.InchDiameters(),
        TyreTables.FlotationDiameters(),
        TyreTables.RollingCircumferences(),
        TyreTables.LoadedFactorOfCars(),
        TyreTables.InchDesign(),
        TyreTables.LoadIndices(),
        TyreTables.SpeedSymbols(),
        TyreTables.SpeedSymbolsFromMemory(),
        TyreTables.MeasuringRims(),
        WorkedSpeeds.Handbooks(),
        WorkedSpeeds.TradePress(),
        WorkedSpeeds.MakersGuideFromMemory(),
        WorkedSpeeds.TextbookFromMemory(),
        WorkedSpeeds.CommonPractice(),
    ];
}
