using BuildLog.Gearing.Tyres;

namespace BuildLog.Gearing.RunningGear;

/// <summary>What the tyres of an axle may carry.</summary>
/// <remarks>
/// <code>m = 2 · load(LI),   4 · load(dual LI) on twin wheels;   / 1.10 for a passenger tyre on a truck or multi-purpose vehicle</code>
/// <para>kg; load(LI) from <see cref="LoadIndex"/>. At the pressure that belongs to the load and up to the speed of the symbol.</para>
/// <para>Source: the sum rule in a vehicle maker's manual; 1.10 in US safety standard FMVSS 120, S5.1.2, by an interpretation letter of 1976.</para>
/// </remarks>
public static class TyreLoad
{
    /// <summary>What the load of a passenger tyre is divided by on a truck or multi-purpose vehicle (FMVSS 120, S5.1.2).</summary>
    public const double PassengerOnTruck = 1.10;

    /// <summary>Kilograms an axle; null where the marking has no load index for it.</summary>
    public static double? OfAxle(TyreSize size, bool twin = false, bool passengerOnTruck = false)
    {
        var capacity = twin ? 4 * size.LoadCapacityDualKg : 2 * size.LoadCapacityKg;
        return passengerOnTruck ? capacity / PassengerOnTruck : capacity;
    }

    /// <summary>The smallest single load index that carries an axle; null above the table.</summary>
    public static int? IndexFor(double axleKilograms, bool passengerOnTruck = false)
    {
        var perTyre = axleKilograms / 2 * (passengerOnTruck ? PassengerOnTruck : 1);
        for (var index = 0; index <= LoadIndex.Highest; index++)
        {
            if (LoadIndex.CapacityKg(index) >= perTyre - 1e-9) return index;
        }

        return null;
    }
}
