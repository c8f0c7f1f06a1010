using BuildLog.Data;
using BuildLog.Data.Costs;
using BuildLog.Data.Days;
using BuildLog.Data.Donors;
using BuildLog.Data.Notes;
using BuildLog.Data.Suppliers;
using BuildLog.Data.Workshops;

namespace BuildLog.DemoData;

/// <summary>The shop's own card, whom it deals with, and the van behind the shed that gives its parts.</summary>
internal static class Yard
{
    public static Supplier Enter(Shop shop)
    {
        shop.Add(new Workshop { Name = "Thorley's shed", Address = "Mill Lane 4, Ambery", Currency = Currency.Euro.Code });
        var tolland = shop.Add(new Supplier { Name = "Tolland yard", Contact = "row 6, ask for Bartle; closed on Mondays", GoodFor = "axles, gearboxes" });
        shop.Add(new Supplier { Name = "Ambery Balancing", Contact = "two weeks, cash", GoodFor = "propshafts, balancing" });
        shop.Add(new Note(tolland) { Date = new(2024, 10, 26), Title = "tags", Body = "Tags there have been moved between housings. Count before paying." });

        var van = shop.Add(new Donor
        {
            Name = "Wexcombe delivery van",
            ChassisNumber = "WX-DV-11853",
            SellerId = tolland.Id,
            Bought = LooseDayText.Read("spring 2024").OrRefuse(),
            Price = Euro(640),
            Fate = DonorFate.Sell,
            Place = "behind the shed",
        });
        shop.Add(new DonorPiece(van) { What = "engine with gearbox", State = PieceState.Taken, Day = LooseDayText.Read("9 March 2024").OrRefuse() });
        shop.Add(new DonorPiece(van) { What = "front seats", State = PieceState.Sold, Income = Euro(90) });
        shop.Add(new DonorPiece(van) { What = "rear axle, bent", State = PieceState.Remains });
        return tolland;
    }

    public static Money Euro(decimal amount) => Money.Of((long)(amount * 100), Currency.Euro);
}
