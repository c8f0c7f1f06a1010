using Microsoft.EntityFrameworkCore.Design;

namespace BuildLog.Data.Files;

#pragma warning disable CA1812 // `dotnet ef` makes it.
/// <summary>Lets <c>dotnet ef migrations add</c> read the model.</summary>
internal sealed class DesignTimeShop : IDesignTimeDbContextFactory<ShopContext>
#pragma warning restore CA1812
{
    public ShopContext CreateDbContext(string[] args) => new(ShopContext.OptionsFor("design-time.db"));
}
