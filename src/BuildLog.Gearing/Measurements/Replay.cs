using System.Diagnostics;

namespace BuildLog.Gearing.Measurements;

/// <summary>The operations behind a value, laid out in order, to be gone through again with drawn inputs.</summary>
/// <remarks>
/// Works on blocks of trials, one row of numbers for each operation: a row stays in the processor's cache, and nothing is allocated on the way.
/// A choice that was made on the way (which gear, which of two limits) stays as it was made.
/// </remarks>
internal sealed class Replay
{
    public const int Block = 500;

    private readonly Dictionary<Measured, int> places = [];
    private readonly Dictionary<Input, double[]> errors = [];
    private readonly List<Line> lines = [];

    private Replay(Measured value) => Add(value);

    // One operation; Left and Right are places in the list of lines.
    private sealed record Line(Measured Value, int Left, int Right, (double[] Error, double Sensitivity)[] Inputs)
    {
        public double[] Row { get; } = new double[Block];

        /// <summary>Of a root: what is computed from its unknown, in order; the last is what has to be zero.</summary>
        public Line[] Equation { get; init; } = [];
    }

    /// <summary>The inputs it draws, each once.</summary>
    public IReadOnlyCollection<Input> Inputs => errors.Keys;

    public static Replay Of(Measured value) => new(value);

    /// <summary>One block of trials; the answer is overwritten by the next.</summary>
    public ReadOnlySpan<double> Draw(Random random)
    {
        foreach (var (input, error) in errors) Draws.Fill(error, input, random);
        foreach (var line in lines) Go(line);
        return lines[^1].Row;
    }

    private int Add(Measured value)
    {
        if (places.TryGetValue(value, out var known)) return known;

        var origin = value.Origin;
        var left = origin.Left is null ? -1 : Add(origin.Left);
        var right = origin.Right is null ? -1 : Add(origin.Right);
        lines.Add(new(value, left, right, origin.Operation == Operation.Given ? [.. value.Inputs.Select(part => (Error(part.Input), part.Sensitivity))] : [])
        {
            Equation = origin.Operation == Operation.Root ? ComputedFrom(right, left) : [],
        });
        return places[value] = lines.Count - 1;
    }

    private Line[] ComputedFrom(int unknown, int last)
    {
        var hangs = new bool[last + 1];
        hangs[unknown] = true;
        for (var k = unknown + 1; k <= last; k++) hangs[k] = (lines[k].Left >= 0 && hangs[lines[k].Left]) || (lines[k].Right >= 0 && hangs[lines[k].Right]);

        return [.. lines.Take(last + 1).Where((_, k) => k > unknown && hangs[k])];
    }

    private double[] Error(Input input)
    {
        if (!errors.TryGetValue(input, out var error)) errors[input] = error = new double[Block];
        return error;
    }

    private void Go(Line line)
    {
        var row = line.Row;
        var left = line.Left < 0 ? row : lines[line.Left].Row;
        var right = line.Right < 0 ? row : lines[line.Right].Row;
        switch (line.Value.Origin.Operation)
        {
            case Operation.Unknown:
                Array.Fill(row, line.Value.Value);
                break;
            case Operation.Root:
                Roots.Solve(row, line.Value.Value, right, () =>
                {
                    foreach (var part in line.Equation) Go(part);
                    return left;
                });
                break;
            case Operation.Given:
                Array.Fill(row, line.Value.Value);
                foreach (var (error, sensitivity) in line.Inputs)
                {
                    for (var k = 0; k < row.Length; k++) row[k] += sensitivity * error[k];
                }

                break;
            case Operation.Sum:
                for (var k = 0; k < row.Length; k++) row[k] = left[k] + right[k];
                break;
            case Operation.Difference:
                for (var k = 0; k < row.Length; k++) row[k] = left[k] - right[k];
                break;
            case Operation.Product:
                for (var k = 0; k < row.Length; k++) row[k] = left[k] * right[k];
                break;
            case Operation.Quotient:
                for (var k = 0; k < row.Length; k++) row[k] = left[k] / right[k];
                break;
            case Operation.Function:
                var function = line.Value.Origin.Function!;
                for (var k = 0; k < row.Length; k++) row[k] = function(left[k]);
                break;
            default:
                throw new UnreachableException();
        }
    }
}
