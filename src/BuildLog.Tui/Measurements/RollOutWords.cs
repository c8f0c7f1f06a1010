using BuildLog.Gearing.Quantities;
using BuildLog.Gearing.Tyres;
using BuildLog.Tui.Bench;

namespace BuildLog.Tui.Measurements;

/// <summary>What a roll-out says.</summary>
public static class RollOutWords
{
    public static IReadOnlyList<string> Live(RollOut roll, UnitSystem units)
        => roll.How.Loaded
            ? [$"Rolling circumference {Rounded.WithInterval(roll.RollingCircumference, units.Length)} (95 %)."]
            :
            [
                $"Rolled {Rounded.WithInterval(roll.Measured, units.Length)} a turn; free diameter {Rounded.Value(roll.FreeDiameter!, units.Length)}.",
                $"Under the vehicle it covers less: rolling circumference {Rounded.WithInterval(roll.RollingCircumference, units.Length)} (95 %).",
            ];

    public static IReadOnlyList<string> Full(RollOut roll, UnitSystem units)
    {
        var interval = roll.RollingCircumference.Interval95;
        return
        [
            .. Live(roll, units),
            Rounded.WithUnit($"95 % interval {Rounded.Fixed(units.Length.FromBase(interval.Low), 3)} to {Rounded.Fixed(units.Length.FromBase(interval.High), 3)}", units.Length) + ".",
        ];
    }
}
