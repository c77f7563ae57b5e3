using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Design;

namespace Crossmember.Storage;

/// <summary>Lets the migration tool build the model without a shop.</summary>
public sealed class ShopDbDesign : IDesignTimeDbContextFactory<ShopDb>
{
    public ShopDb CreateDbContext(string[] args) => new(new DbContextOptionsBuilder<ShopDb>().UseSqlite("Data Source=design.db").Options);
}
