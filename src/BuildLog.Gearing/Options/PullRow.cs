using System.Numerics;

namespace BuildLog.Gearing.Options;

/// <summary>The pull curve of one gearbox and overdrive, seen from one axle.</summary>
/// <param name="steps">The curve; empty where no check of pull speaks.</param>
/// <param name="axle">Where the axle lies on it.</param>
internal readonly ref struct PullRow(ReadOnlySpan<PullVerdict> steps, double axle)
{
    private readonly ReadOnlySpan<PullVerdict> steps = steps;

    /// <summary>Adds what the curve says at the tyres' places, lane by lane.</summary>
    public void AddTo(Vector<double> places, ref Vector<double> clash, ref Vector<double> open, ref Vector<double> watch, ref Vector<long> unsure)
    {
        if (steps.IsEmpty) return;

        Span<double> counts = stackalloc double[3 * Vector<double>.Count];
        Span<long> masks = stackalloc long[Vector<long>.Count];
        for (var lane = 0; lane < Vector<double>.Count; lane++)
        {
            ref readonly var step = ref steps[Math.Clamp((int)(axle + places[lane]), 0, steps.Length - 1)];
            (counts[lane], counts[Vector<double>.Count + lane], counts[(2 * Vector<double>.Count) + lane]) = (step.Clash, step.Open, step.Watch);
            masks[lane] = step.IsUnsure ? -1 : 0;
        }

        clash += new Vector<double>(counts);
        open += new Vector<double>(counts[Vector<double>.Count..]);
        watch += new Vector<double>(counts[(2 * Vector<double>.Count)..]);
        unsure |= new Vector<long>(masks);
    }
}
