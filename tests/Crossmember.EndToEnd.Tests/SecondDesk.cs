using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;

namespace Crossmember.EndToEnd.Tests;

/// <summary>Another shop in a folder of its own, to which a build is handed over.</summary>
public sealed class SecondDesk : IDisposable
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-second-");
    private readonly OpenShop _shop;

    public SecondDesk() => _shop = OpenShop.Open(_data.FullName, TimeProvider.System);

    public byte[] ImportedAndExported(byte[] file, string id)
    {
        Import(_shop, file);
        return _shop.Exporting.Export(id, new Faults())!;
    }

    /// <summary>Puts a build into a folder while no desk is open on it.</summary>
    public static void Import(string folder, byte[] file)
    {
        using var shop = OpenShop.Open(folder, TimeProvider.System);
        Import(shop, file);
    }

    private static void Import(OpenShop shop, byte[] file)
    {
        var faults = new Faults();
        Assert.NotNull(shop.Importing().Import(BuildFile.Read(file, Catalogue.Shipped, faults)!, null, faults));
    }

    public void Dispose()
    {
        _shop.Dispose();
        _data.Delete(recursive: true);
    }
}
