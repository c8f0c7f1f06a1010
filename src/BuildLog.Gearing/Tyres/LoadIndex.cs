namespace BuildLog.Gearing.Tyres;

/// <summary>The load a tyre may carry, by its load index.</summary>
/// <remarks>
/// Source: Directive 92/23/EEC, annex II, as printed in the French order of 24 October 1994. That print has 240 for index 59; UN R30 and the series
/// of its neighbours make it 243. Valid for indices 0 to 200.
/// </remarks>
public static class LoadIndex
{
    internal const int Highest = 200;

    private static readonly double[] Kilograms =
    [
        45, 46.2, 47.5, 48.7, 50, 51.5, 53, 54.5, 56, 58, 60, 61.5, 63, 65, 67, 69, 71, 73, 75, 77.5,
        80, 82.5, 85, 87.5, 90, 92.5, 95, 97.5, 100, 103, 106, 109, 112, 115, 118, 121, 125, 128, 132, 136,
        140, 145, 150, 155, 160, 165, 170, 175, 180, 185, 190, 195, 200, 206, 212, 218, 224, 230, 236, 243,
        250, 257, 265, 272, 280, 290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437,
        450, 462, 475, 487, 500, 515, 530, 545, 560, 580, 600, 615, 630, 650, 670, 690, 710, 730, 750, 775,
        800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, 1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360,
        1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, 1900, 1950, 2000, 2060, 2120, 2180, 2240, 2300, 2360, 2430,
        2500, 2575, 2650, 2725, 2800, 2900, 3000, 3075, 3150, 3250, 3350, 3450, 3550, 3650, 3750, 3875, 4000, 4125, 4250, 4375,
        4500, 4625, 4750, 4875, 5000, 5150, 5300, 5450, 5600, 5800, 6000, 6150, 6300, 6500, 6700, 6900, 7100, 7300, 7500, 7750,
        8000, 8250, 8500, 8750, 9000, 9250, 9500, 9750, 10000, 10300, 10600, 10900, 11200, 11500, 11800, 12150, 12500, 12850, 13200, 13600,
        14000,
    ];

    /// <summary>Kilograms per tyre; null for an index the table does not have.</summary>
    public static double? CapacityKg(int index) => index is >= 0 and <= Highest ? Kilograms[index] : null;
}
