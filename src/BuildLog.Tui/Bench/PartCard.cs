using BuildLog.Data;
using BuildLog.Data.Drivelines;
using BuildLog.Data.Vehicles;
using BuildLog.Gearing.Drivelines;
using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;
using BuildLog.Tui.Forms;

namespace BuildLog.Tui.Bench;

/// <summary>A part's card: every number with its evidence, where the part has been, what was measured on it, what it cost.</summary>
internal static class PartCard
{
    public static IReadOnlyList<string> Of(Shop shop, Vehicle vehicle, Position position, DateOnly today, UnitSystem units)
    {
        var fitted = shop.DrivelineOn(vehicle, today);
        if (fitted.At(position) is not { } part) return [Spoken("Nothing is fitted here.")];

        var life = shop.LifeOf(part);
        return
        [
            .. Section(Spoken("Numbers"), fitted.Numbers.Where(number => number.Position == position).Select(number => Number(number, units))),
            .. Section(Spoken("Read off it"), [.. life.Numbers.Select(number => number.ToString() ?? ""), .. part.SerialNumber.Length > 0 ? [part.SerialNumber] : Array.Empty<string>()]),
            .. Section(Spoken("Where it has been"), life.Service.Select(time => Service(time, units))),
            .. Section(Spoken("Measured on it"), life.Sessions.Select(session => $"{DayText.InShort(session.Day)}  {session.Method}")),
            .. Section(Spoken("Cost"), life.Costs.Select(cost => $"{DayText.InShort(cost.Day)}  {cost.Amount}  {cost.What}")),
        ];
    }

    private static IEnumerable<string> Section(string heading, IEnumerable<string> lines)
    {
        var said = lines.Where(line => line.Length > 0).Select(line => "  " + line).ToList();
        return said.Count == 0 ? [] : [heading, .. said];
    }

    private static string Number(NumberKnown number, UnitSystem units)
    {
        string Words(Known known) => Says(known, number.Unit, units);

        var weaker = number.PassedOver.Count == 0 ? "" : Spoken($"; weaker: {string.Join(", ", number.PassedOver.Select(Words))}");
        return $"{number.Number}  {Words(number.Used)}{weaker}";
    }

    private static string Says(Known known, Unit unit, UnitSystem units)
        => $"{units.InWords(known, unit)} ({known.Source.InWords()}{(known.Says.Length > 0 ? ": " + known.Says : "")})";

    private static string Service(Data.Components.TimeFitted time, UnitSystem units)
    {
        var distance = time.Distance is { } way ? $", {(way.IsAtLeast ? Spoken("at least ") : "")}{Rounded.WithUnit(Rounded.Fixed(units.Distance.FromBase(way.Metres), 0), units.Distance)}" : "";
        return $"{time.Fitment.Vehicle.Name}, {time.Fitment}{distance}";
    }
}
