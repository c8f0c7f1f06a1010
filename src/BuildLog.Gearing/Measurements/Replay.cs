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
        lines.Add(new(value, left, right, origin.Operation == Operation.Given ? [.. value.Inputs.Select(part => (Error(part.Input), part.Sensitivity))] : []));
        return places[value] = lines.Count - 1;
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
