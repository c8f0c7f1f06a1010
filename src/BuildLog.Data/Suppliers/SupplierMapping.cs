using Microsoft.EntityFrameworkCore;

namespace BuildLog.Data.Suppliers;

internal static class SupplierMapping
{
    public static void Map(ModelBuilder model) => model.Entry<Supplier>("Suppliers").Filled("Name");
}
