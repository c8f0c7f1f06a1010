using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Goals;
using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Ratios;

namespace BuildLog.Gearing.Checks;

/// <summary>Between which values parts are made for the road; a cure beyond is one of numbers only.</summary>
/// <remarks>
/// An axle's differential as <see cref="RatioTraps.UsualAxle"/>; a tyre no more than a quarter taller or lower than the one fitted, since arches, hubs and brakes stay.
/// Common practice, no source.
/// </remarks>
internal static class PartsMade
{
    /// <summary>Top gears, overdrives inside the box among them.</summary>
    public static readonly Window UsualTop = new(0.50, 1.10);

    private const double MostOffTheFitted = 0.25;

    private static readonly Window AnyGear = new(UsualTop.Low, 8), AnyRange = new(0.7, 6), AnyCircumference = new(1.3, 3.5), Anything = new(double.NegativeInfinity, double.PositiveInfinity);

    /// <param name="window">The window of a part.</param>
    /// <param name="driveline">What is fitted.</param>
    public static Window Of(PartWindow window, Driveline driveline)
        => Of(window.Position, window.IsOfTopGear, driveline);

    /// <param name="position">The part.</param>
    /// <param name="isOfTopGear">What is asked of a gearbox is asked of its top gear.</param>
    /// <param name="driveline">What is fitted.</param>
    public static Window Of(Position position, bool isOfTopGear, Driveline driveline)
        => position == Position.Transmission && isOfTopGear ? UsualTop : Of(position, driveline);

    /// <param name="position">The part.</param>
    /// <param name="driveline">What is fitted: its hub reduction stays, and its tyres say which others have room; null for any.</param>
    public static Window Of(Position position, Driveline? driveline = null) => position switch
    {
        Position.RearAxle => Axle(driveline?.RearAxle),
        Position.FrontAxle => Axle(driveline?.FrontAxle),
        Position.Transmission or Position.Overdrive => AnyGear,
        Position.TransferCase => AnyRange,
        Position.Tyres => Tyre(driveline?.DrivingTyres),
        Position.FrontTyres => Tyre(driveline?.Tyres?.On(Position.FrontAxle)),
        _ => Anything,
    };

    /// <summary><c>, in practice 2.567 m or less</c>, where a window reaches beyond what is made; empty where it does not, and where nothing of it is made.</summary>
    /// <param name="window">What would do.</param>
    /// <param name="made">What is made.</param>
    /// <param name="unit">The unit to say it in; both windows are in its base unit.</param>
    public static string InPractice(Window window, Window made, Unit unit)
    {
        // A side that is open stays so: nobody asks for less than the least that is made. Nor is said what reads alike.
        bool ReadsOtherwise(Window wanted, Window isMade) => wanted.InWords(unit) != isMade.InWords(unit);
        var limits = new Window(
            double.IsFinite(window.Low) && window.Low < made.Low && ReadsOtherwise(Window.AtLeast(window.Low), Window.AtLeast(made.Low)) ? made.Low : double.NegativeInfinity,
            double.IsFinite(window.High) && window.High > made.High && ReadsOtherwise(Window.AtMost(window.High), Window.AtMost(made.High)) ? made.High : double.PositiveInfinity);
        return made.Overlaps(window) && (double.IsFinite(limits.Low) || double.IsFinite(limits.High)) ? Spoken($", in practice {limits.InWords(unit)}") : "";
    }

    private static Window Axle(Axle? fitted)
        => fitted?.HubReduction?.Value.Value is { } hub ? new(RatioTraps.UsualAxle.Low * hub, RatioTraps.UsualAxle.High * hub) : RatioTraps.UsualAxle;

    private static Window Tyre(TyreSet? fitted)
        => fitted?.RollingCircumference?.Value.Value is { } c ? AnyCircumference.And(new(c * (1 - MostOffTheFitted), c * (1 + MostOffTheFitted))) : AnyCircumference;
}
