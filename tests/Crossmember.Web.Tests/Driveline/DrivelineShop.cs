using System.Text;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Driveline;

namespace Crossmember.Web.Tests.Driveline;

/// <summary>A store with the invented flatbed, told what it left the works with: 4.10 on 29 in.</summary>
internal sealed class DrivelineShop : IDisposable
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-driveline-");
    private readonly OpenShop _shop;

    public DrivelineShop(string? json = null)
    {
        _shop = OpenShop.Open(_data.FullName, TimeProvider.System);
        Desk = new(_shop);
        Assert.NotNull(Desk.Import(Encoding.UTF8.GetBytes(json ?? Json), new Faults()));
    }

    public ShopDesk Desk { get; }

    public static string Json { get; } = Bracken.Json
        .Replace("\"duty.cruise-speed\":", "\"vehicle.original.tire-diameter\":{\"value\":\"29 in\",\"basis\":\"published\"},\"vehicle.original.axle-ratio\":{\"value\":4.1,\"basis\":\"published\"},\"duty.cruise-speed\":", StringComparison.Ordinal)
        .Replace("\"id\":\"working\",\"base\":null,\"choices\":{}", "\"id\":\"working\",\"base\":null,\"choices\":{\"tires\":\"at33\"}", StringComparison.Ordinal);

    public DrivelineView View(string scenario = "working", string? against = "as-found") => new(Desk.Open("bracken")!, Desk.Shop.Shelf.Shop(), scenario, against);

    public void Dispose()
    {
        _shop.Dispose();
        _data.Delete(recursive: true);
    }
}
