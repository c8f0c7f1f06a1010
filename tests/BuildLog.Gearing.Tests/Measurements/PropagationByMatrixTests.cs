using BuildLog.Gearing.Measurements;
using BuildLog.Gearing.Propshafts;
using BuildLog.Gearing.Speeds;
using CsCheck;
using MathNet.Numerics.Differentiation;
using MathNet.Numerics.LinearAlgebra;
using Xunit;

namespace BuildLog.Gearing.Tests.Measurements;

/// <summary>Propagation by another route: MathNet's J Σ Jᵀ with a Jacobian of differences, for several results of inputs that share their errors.</summary>
/// <remarks>
/// <code>Σ_y = J Σ_x Jᵀ,   Σ_x = L Lᵀ   (JCGM 102:2011, 6.2.1)</code>
/// <para>The formulas are written a second time in plain numbers; nothing of the engine's derivatives is in the route.</para>
/// </remarks>
public sealed class PropagationByMatrixTests
{
    private const int Inputs = 6;
    private const int Errors = 4;

    // What cancels is nothing for the engine; differences leave the last bits of it.
    private const double DifferencesRound = 1e-10;

    // Six inputs between 0.5 and 5, each with some of four errors: what two of them share correlates them.
    private static readonly Gen<(double[] At, double[] Shares)> Any
        = Gen.Select(Gen.Double[0.5, 5].Array[Inputs], Gen.Frequency((1, Gen.Const(0.0)), (3, Gen.Double[-0.05, 0.05])).Array[Inputs * Errors]);

    [Fact]
    public void A_speed_chain_and_what_shares_its_inputs() => Holds(
        x => [Chain(x).RoadSpeed!, Chain(x).OverallRatio, Chain(x).WheelSpeed, x[2] / x[3], Chain(x).RoadSpeed! / x[1]],
        [
            x => x[0] * x[1] / (x[2] * x[3] * x[4]),
            x => x[2] * x[3] * x[4],
            x => x[0] / (x[2] * x[3] * x[4]),
            x => x[2] / x[3],
            x => x[0] / (x[2] * x[3] * x[4]),
        ]);

    [Fact]
    public void Sums_roots_and_angles_of_shared_readings() => Holds(
        x => [x[0] + x[1] - (2 * x[2]), ((x[0] * x[0]) + (x[1] * x[1])).SquareRoot(), new JointAngle(x[3] - x[2], x[5] - x[4]).Compound, Inclination.PlanFromOffsets(x[0], x[4], x[5]), (x[0] * x[5]) - (x[1] / x[4])],
        [
            x => x[0] + x[1] - (2 * x[2]),
            x => Math.Sqrt((x[0] * x[0]) + (x[1] * x[1])),
            x => Math.Sqrt(((x[3] - x[2]) * (x[3] - x[2])) + ((x[5] - x[4]) * (x[5] - x[4]))),
            x => Math.Atan((x[0] - x[4]) / x[5]),
            x => (x[0] * x[5]) - (x[1] / x[4]),
        ]);

    private static SpeedRelation Chain(Measured[] x)
        => new SpeedRelation { EngineSpeed = x[0], Circumference = x[1], Gear = x[2], Axle = x[3], Transfer = x[4] }.Solved();

    private static void Holds(Func<Measured[], Measured[]> engine, Func<double[], double>[] plain) => Any.Sample((at, shares) =>
    {
        // A joint that lies nearly straight has no slope to take differences of.
        if (double.Hypot(at[3] - at[2], at[5] - at[4]) < 0.3) return;

        var evidence = new Evidence("shared");
        var errors = Enumerable.Range(0, Errors).Select(k => new Input($"error {k}", 1, evidence)).ToArray();
        var results = engine([.. at.Select((value, i) => Measured.From(value, [.. errors.Select((error, k) => (error, shares[(i * Errors) + k]))]))]);

        var l = Matrix<double>.Build.Dense(Inputs, Errors, (i, k) => shares[(i * Errors) + k]);
        var sensitivities = Matrix<double>.Build.DenseOfRowArrays(plain.Select(function => new NumericalJacobian(5, 2).Evaluate(function, at).Cast<double>().ToArray()));
        var covariances = sensitivities * (l * l.Transpose()) * sensitivities.Transpose();

        for (var a = 0; a < results.Length; a++)
        {
            Assert.Equal(plain[a](at), results[a].Value, 1e-12 * Math.Max(1, Math.Abs(results[a].Value)));
            for (var b = 0; b < results.Length; b++)
            {
                var scale = Math.Sqrt(Math.Abs(covariances[a, a] * covariances[b, b]));
                Assert.Equal(covariances[a, b], Measured.Covariance(results[a], results[b]), (1e-5 * scale) + DifferencesRound);
            }

            Assert.Equal(Math.Sqrt(Math.Max(0, covariances[a, a])), results[a].StandardUncertainty, (1e-5 * results[a].StandardUncertainty) + DifferencesRound);
        }
    });
}
