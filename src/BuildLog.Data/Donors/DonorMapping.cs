using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Donors;

internal static class DonorMapping
{
    public static void Map(ModelBuilder model)
    {
        model.Entry<Donor>("Donors").With(d => d.Seller).Filled("Name").Words(d => d.Fate).LooseDay(d => d.Bought).Money(d => d.Price);
        model.Entry<DonorPiece>("DonorPieces").Of<DonorPiece, Donor>(p => p.DonorId).With(p => p.Component)
            .Filled("What").Words(p => p.State).LooseDay(p => p.Day).Money(p => p.Income);
    }
}
