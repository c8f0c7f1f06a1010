using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Quantities;

namespace BuildLog.Gearing.RunningGear;

/// <summary>A vehicle on a weighbridge: each axle, and all of it as a check on the two.</summary>
/// <remarks>
/// <code>m front + m rear = m whole</code>
/// <para>Kilograms. Uncertainty: half the display's step, rectangular, unless a ± was typed; several displays of one thing are averaged. Where whole and axles
/// contradict, any of the three may be wrong by the gap, and each is no surer than that: rectangular.</para>
/// <para>Right with free brakes on a plate level with its approach. Source: statics; JCGM 100:2008, F.2.2.1.</para>
/// </remarks>
public sealed class Weighing
{
    private readonly ILookup<OnThePlate, WeighReading> readings;
    private readonly double step;

    private Weighing(IReadOnlyList<WeighReading> readings, double step) => (this.readings, this.step) = (readings.ToLookup(reading => reading.On), step);

    /// <summary>Kilograms on the front axle; null where it was not weighed.</summary>
    public Measured? Front => Taken(OnThePlate.Front);

    /// <summary>Kilograms on the rear axle; null where it was not weighed.</summary>
    public Measured? Rear => Taken(OnThePlate.Rear);

    /// <summary>As weighed in one; where that was not done, the sum of both axles.</summary>
    public Measured? Whole => Taken(OnThePlate.Whole) ?? Sum;

    /// <summary>m front + m rear, kilograms; null where one was not weighed.</summary>
    public Measured? Sum => Front is { } front && Rear is { } rear ? front + rear : null;

    /// <summary>How far the whole is from the sum of the axles; null where one of the three was not weighed.</summary>
    public double? Gap => (Mean(OnThePlate.Whole), Mean(OnThePlate.Front), Mean(OnThePlate.Rear)) is ({ } whole, { } front, { } rear) ? Math.Abs(whole.Value - front.Value - rear.Value) : null;

    /// <summary>The gap is what three displays and a level road allow: each is off by half a step, twice that is for the slope between road and plate.</summary>
    public bool Agrees => Gap is null || Gap <= 3 * step;

    /// <summary>The axle that carries all of it, so that nothing would be left for the other; null where neither does.</summary>
    public OnThePlate? CarriesAll
        => Mean(OnThePlate.Whole) is not { Value: var whole } ? null
            : new[] { OnThePlate.Front, OnThePlate.Rear }.Where(axle => Mean(axle)?.Value > whole - step).Select(axle => (OnThePlate?)axle).FirstOrDefault();

    /// <param name="readings">At least one.</param>
    /// <param name="step">The smallest step of the display, kilograms.</param>
    /// <exception cref="RefusedException">Nothing was weighed, or no display has such a step.</exception>
    public static Weighing Of(IReadOnlyList<WeighReading> readings, double step)
    {
        if (readings.Count == 0) throw new RefusedException("weighing", Spoken("Nothing was weighed."), "front 700 kg");
        if (step is not (> 0 and <= 1000)) throw new RefusedException("step", Spoken($"A weighbridge's display goes in steps of more than zero and at most 1000 kg, not {Rounded.Exact(step)}."), "20 kg");
        return new(readings, step);
    }

    /// <summary>What to do where whole and axles contradict.</summary>
    internal static string Again => Spoken("weigh the axles and the whole again, all wheels level and the brakes free");

    private Measured? Taken(OnThePlate on)
        => Mean(on) is { } mean && Gap is { } gap && !Agrees
            ? mean + Measured.From(0, Input.Rectangular(Spoken($"weighing of the {on.InWords()}, contradicted"), gap, new Evidence(Spoken("weighing"), _ => Again)))
            : Mean(on);

    // One display is alike in all of its readings: the mean of several is no surer than one of them.
    private Measured? Mean(OnThePlate on)
    {
        var masses = readings[on].Select(reading => reading.Mass).ToList();
        if (masses.Count == 0) return null;

        var name = Spoken($"weighing of the {on.InWords()}");
        if (masses.Find(mass => mass.StandardUncertainty > 0) is { } sure && masses.Count == 1) return sure.ToMeasured(name);
        return RepeatedReadings.Mean([.. masses.Select(mass => mass.Value)], step / 2, name);
    }
}

/// <summary>What stood on the plate, in words.</summary>
public static class OnThePlateWords
{
    /// <summary><c>front axle</c>, <c>whole vehicle</c>.</summary>
    public static string InWords(this OnThePlate on) => on switch
    {
        OnThePlate.Front => Spoken("front axle"),
        OnThePlate.Rear => Spoken("rear axle"),
        OnThePlate.Whole => Spoken("whole vehicle"),
        _ => throw new ArgumentOutOfRangeException(nameof(on), on, "Nothing such stands on a plate."),
    };
}
