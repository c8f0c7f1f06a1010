using System.Globalization;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.RoadLoad;

namespace BuildLog.Gearing.Tests.Published;

/// <summary>Two hundred vehicles of a test car list: road-load coefficients with the printed power at 50 mph and coast-down time from 55 to 45 mph.</summary>
/// <remarks>The effective mass, 1.5 % above the test weight, is not printed: it is what makes the printed times. A time passes within 0.5 %.</remarks>
internal static class RoadLoadRows
{
    private const string List = "US EPA test car list 2008 (public domain)";
    private const double TurningMass = 1.015;
    private static readonly double Mph = Units.MilePerHour.Factor;

    private static readonly IReadOnlyList<Row> Rows =
    [
        .. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Published", "EpaRoadLoad2008.csv"))
            .Where(line => !line.StartsWith('#')).Skip(1).Select((line, k) => Row.Of(k + 1, line.Split(','))),
    ];

    public static PublishedSet Power() => new("Road-load power at 50 mph", List, Standing.Read,
    [
        .. Rows.Where(row => row.Horsepower is not null).Select(row => Figure.ToPlaces(
            $"row {row.Number}, hp", row.Horsepower!.Value, 1, Units.Horsepower.FromBase(row.Curve.Power(50 * Mph)))),
    ]);

    public static PublishedSet CoastDown() => new("Coast-down time from 55 to 45 mph", List, Standing.Read,
    [
        .. Rows.Select(row => Figure.ToRelative(
            $"row {row.Number}, s", row.Seconds, row.Curve.CoastDown(row.Pounds * 0.45359237 * TurningMass, 55 * Mph, 45 * Mph), 0.005)),
    ]);

    private sealed record Row(int Number, double Pounds, RoadLoadCurve Curve, double? Horsepower, double Seconds)
    {
        public static Row Of(int number, string[] cells)
        {
            double Cell(int k) => double.Parse(cells[k], CultureInfo.InvariantCulture);
            var curve = new RoadLoadCurve(Cell(2) * Units.PoundForce, Cell(3) * Units.PoundForce / Mph, Cell(4) * Units.PoundForce / (Mph * Mph));
            return new(number, Cell(1), curve, cells[5].Length == 0 ? null : Cell(5), Cell(7));
        }
    }
}
