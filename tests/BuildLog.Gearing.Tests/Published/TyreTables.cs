using System.Globalization;
using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Tyre dimensions, load indices, speed symbols and rims in print.</summary>
internal static class TyreTables
{
    // Overall diameter and factor C/D on 15° rims, European Commission heavy-duty CO2 declaration data, metric rows.
    private static readonly (string Size, double Diameter, int Decimals, double Factor)[] HeavyDuty =
    [
        ("215/75 R17.5", 767, 0, 3.05), ("225/75 R17.5", 782, 0, 3.05), ("245/70 R17.5", 787.5, 1, 3.05), ("255/70 R22.5", 928.5, 1, 3.05),
        ("275/70 R22.5", 956.5, 1, 3.05), ("285/70 R19.5", 894.3, 1, 3.05), ("295/60 R22.5", 925.5, 1, 3.03), ("305/70 R19.5", 922.3, 1, 3.05),
        ("315/45 R22.5", 855, 0, 3.03), ("315/70 R22.5", 1012.5, 1, 3.05), ("365/80 R20", 1092, 0, 3.05), ("385/55 R22.5", 995, 0, 3.03),
    ];

    private static readonly (string Size, double Rim)[] Rims =
    [
        ("P175/75R14", 5), ("P195/75R15", 5.5), ("P215/75R15", 6), ("P235/75R15", 6.5), ("P225/75R15", 6), ("P225/70R15", 6.5), ("P225/65R16", 6.5),
        ("P225/60R15", 6.5), ("P225/55R15", 7), ("P225/50R15", 7), ("P225/45R17", 7.5), ("P225/40R18", 8), ("P205/60R15", 6),
    ];

    // French order of 24 October 1994 (transposes Directive 92/23/EEC), annex II, in kg; index 59 is misprinted there as 240.
    private static readonly double[] Kilograms =
    [
        45, 46.2, 47.5, 48.7, 50, 51.5, 53, 54.5, 56, 58, 60, 61.5, 63, 65, 67, 69, 71, 73, 75, 77.5, 80, 82.5, 85, 87.5, 90, 92.5, 95, 97.5, 100,
        103, 106, 109, 112, 115, 118, 121, 125, 128, 132, 136, 140, 145, 150, 155, 160, 165, 170, 175, 180, 185, 190, 195, 200, 206, 212, 218, 224,
        230, 236, 243, 250, 257, 265, 272, 280, 290, 300, 307, 315, 325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450, 462, 475, 487, 500,
        515, 530, 545, 560, 580, 600, 615, 630, 650, 670, 690, 710, 730, 750, 775, 800, 825, 850, 875, 900, 925, 950, 975, 1000, 1030, 1060, 1090,
        1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, 1400, 1450, 1500, 1550, 1600, 1650, 1700, 1750, 1800, 1850, 1900, 1950, 2000, 2060, 2120,
        2180, 2240, 2300, 2360, 2430, 2500, 2575, 2650, 2725, 2800, 2900, 3000, 3075, 3150, 3250, 3350, 3450, 3550, 3650, 3750, 3875, 4000, 4125,
        4250, 4375, 4500, 4625, 4750, 4875, 5000, 5150, 5300, 5450, 5600, 5800, 6000, 6150, 6300, 6500, 6700, 6900, 7100, 7300, 7500, 7750, 8000,
        8250, 8500, 8750, 9000, 9250, 9500, 9750, 10000, 10300, 10600, 10900, 11200, 11500, 11800, 12150, 12500, 12850, 13200, 13600, 14000,
    ];

    private static readonly (string Size, double Diameter)[] FlotationRows =
    [
        ("27x8.50R14LT", 674), ("28x8.50R15LT", 699), ("29x9.50R15LT", 724), ("30x9.50R15LT", 750), ("31x10.50R15LT", 775), ("31x11.50R15LT", 775),
        ("32x11.50R15LT", 801), ("33x12.50R15LT", 826), ("35x12.50R15LT", 877),
    ];

    public static PublishedSet Diameters() => new("Overall diameters of metric sizes", "EC heavy-duty CO2 declaration data", Standing.Read,
    [
        .. HeavyDuty.Select(row => Figure.ToPlaces(row.Size, row.Diameter, row.Decimals, Read(row.Size).OverallDiameter * 1000)),
    ]);

    // The rows marked in inches; 10.00 R20 is left out: 1025 there has its digits changed about.
    // They stand in the engine's own table, from the same print: this proves the typing.
    public static PublishedSet InchDiameters() => new("Overall diameters of truck sizes marked in inches", "EC heavy-duty CO2 declaration data", Standing.Read,
    [
        Diameter("9 R22.5", 970), Diameter("9.5 R17.5", 842), Diameter("10 R22.5", 1020), Diameter("11 R22.5", 1050), Diameter("12 R22.5", 1084),
        Diameter("12.00 R24", 1226), Diameter("13 R22.5", 1124), Diameter("14.5 R20", 1092),
    ]);

    // Remembered rows, each rounded up to a whole millimetre.
    public static PublishedSet FlotationDiameters() => new("Overall diameters of flotation sizes", "UN R54 annex 5", Standing.FromMemory,
    [
        .. FlotationRows.Select(row => new Figure(row.Size, row.Diameter, Read(row.Size).OverallDiameter * 1000, 1)),
    ]);

    // 3.05/π is 0.9708 and the loaded factor 0.971 (u 0.010); the rows with 3.03 are 0.7 % lower, well inside it.
    public static PublishedSet RollingCircumferences() => new("Rolling circumferences of radials, loaded factor 0.971", "EC heavy-duty CO2 declaration data", Standing.Read,
    [
        .. HeavyDuty.Select(row => new Figure(
            row.Size,
            row.Factor * row.Diameter,
            Read(row.Size).RollingCircumference.Value * 1000,
            row.Diameter * (row.Factor == 3.05 ? 0.002 : 0.010 * Math.PI))),
    ]);

    // Free diameter 23.96 in against 867 turns a mile; 797 free turns a mile against 821 listed.
    public static PublishedSet LoadedFactorOfCars() => new("Loaded factor of passenger radials", "a club engineer's article and a tyre shop's table", Standing.Read,
    [
        Figure.ToPlaces("175/65R15, 867 turns a mile", 63360 / 867.0 / Math.PI, 2, Read("175/65R15").RollingCircumference.Value / Math.PI / 0.0254),
        Figure.ToPlaces("205/70R14, 797 over 821", 797 / 821.0, 3, LoadedFactor.For(Construction.Radial).Value),
    ]);

    public static PublishedSet LoadIndices() => new("Load indices 0 to 200", "Directive 92/23/EEC, annex II (index 59 misprinted in the copy read)", Standing.Read,
    [
        .. Kilograms.Select((kilograms, index) => new Figure($"LI {index}", kilograms, LoadIndex.CapacityKg(index) ?? double.NaN, 0)),
    ]);

    public static PublishedSet SpeedSymbols() => new("Speed symbols F to V", "Directive 92/23/EEC, annex I", Standing.Read,
        Symbols("F80 G90 J100 K110 L120 M130 N140 P150 Q160 R170 S180 T190 U200 H210 V240"));

    public static PublishedSet SpeedSymbolsOfFastTyres() => new("Speed symbols W and Y", "a vehicle maker's support table", Standing.Read, Symbols("W270 Y300"));

    public static PublishedSet SpeedSymbolsFromMemory() => new("Speed symbols A1 to E", "UN R30 and R54", Standing.FromMemory,
        [.. Enumerable.Range(1, 8).Select(k => new Figure($"A{k}", 5 * k, SpeedSymbol.LimitKmh($"A{k}") ?? double.NaN, 0)), .. Symbols("B50 C60 D65 E70")]);

    public static PublishedSet MeasuringRims() => new("Measuring rims, inches", "a tyre retailer's technical page", Standing.Read,
    [
        .. Rims.Select(row => new Figure(row.Size, row.Rim, Read(row.Size).RimWidth.Measuring, 0)),
        new("P205/60R15, narrowest", 5.5, Read("P205/60R15").RimWidth.Low, 0),
        new("P205/60R15, widest", 7.5, Read("P205/60R15").RimWidth.High, 0),
    ]);

    // Tire and Rim Association design data quoted second-hand: 24.69 in from a section height rounded up to 4.845 in.
    public static PublishedSet InchDesign() => new("Design diameter of P205/60R15, inches", "Tire and Rim Association design data, quoted", Standing.Read,
    [
        new("overall diameter", 24.69, Read("P205/60R15").OverallDiameter / 0.0254, 0.006),
    ]);

    private static Figure[] Symbols(string table)
        => [.. table.Split(' ').Select(entry => new Figure(entry[..1], int.Parse(entry[1..], CultureInfo.InvariantCulture), SpeedSymbol.LimitKmh(entry[..1]) ?? double.NaN, 0))];

    private static Figure Diameter(string size, double printed) => Figure.ToPlaces(size, printed, 0, Read(size).OverallDiameter * 1000);

    private static TyreSize Read(string size) => TyreSizeText.Read(size).OrRefuse();
}
