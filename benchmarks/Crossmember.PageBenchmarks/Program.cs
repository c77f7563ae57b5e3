using Crossmember.PageBenchmarks;
using Microsoft.Playwright;

// What somebody waits for at the desk: its start, the first load of two pages, and deciding. Needs chromium; nothing is asserted.
if (args is ["shop", var records])
{
    await BigShopPages.Time(RepositoryRoot(), records);
    return;
}
var times = args is [var count] ? int.Parse(count, System.Globalization.CultureInfo.InvariantCulture) : 5;
var root = RepositoryRoot();
var chromium = Environment.GetEnvironmentVariable("CROSSMEMBER_CHROMIUM") is { Length: > 0 } named ? named
    : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Select(p => Path.Combine(p, "chromium")).First(File.Exists);

var figures = new Figures();
var folders = new List<DirectoryInfo>();
DirectoryInfo Fresh()
{
    folders.Add(Directory.CreateTempSubdirectory("crossmember-pagebench-"));
    return folders[^1];
}

// Builds what is stale, so that no build is timed.
using (await RunningDesk.Start(root.FullName, Fresh().FullName)) { }
for (var i = 0; i < times; i++)
    using (var desk = await RunningDesk.Start(root.FullName, Fresh().FullName)) figures.Add("./run on an empty folder, to the first page, demo shop imported", "ms", desk.StartMilliseconds);
for (var i = 0; i < times; i++)
    using (var desk = await RunningDesk.Start(root.FullName, folders[0].FullName)) figures.Add("./run on a folder with records, to the first page", "ms", desk.StartMilliseconds);

using (var desk = await RunningDesk.Start(root.FullName, Fresh().FullName))
{
    if (desk.Memory() is { } atStart) figures.Add("memory of the server after the first page", "MiB", atStart);
    var decisions = $"/builds/{await desk.FirstBuild()}/decisions";
    foreach (var (name, path) in new[] { ("Builds", "/"), ("Decisions", decisions), ("peer: static file", "/icon.svg") })
    {
        for (var i = 0; i < 10; i++) await desk.Fetch(path);
        for (var i = 0; i < times * 4; i++) figures.Add($"{name}, made and sent by the server", "ms", await desk.Fetch(path));
    }
    using var playwright = await Playwright.CreateAsync();
    await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = chromium, Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking"] });
    var address = desk.Client.BaseAddress!;
    for (var i = 0; i < times; i++)
    {
        await using (var visit = await Visit.Open(browser)) await visit.FirstLoad(address, "Builds", figures);
        await using (var visit = await Visit.Open(browser)) await visit.FirstLoad(new(address, decisions), "Decisions", figures);
        await using (var visit = await Visit.Open(browser)) await visit.BareFile(new(address, "/icon.svg"), figures);
    }
    await using (var visit = await Visit.Open(browser))
    {
        await visit.Goto(new(address, decisions));
        await visit.GotoItemWithOptions();
        await new Deciding(visit.Page, figures).Run(times * 2);
    }
    if (desk.Memory() is { } afterwards) figures.Add("memory of the server after these visits", "MiB", afterwards);
}
figures.Print();
foreach (var folder in folders) folder.Delete(recursive: true);

static DirectoryInfo RepositoryRoot()
{
    var root = new DirectoryInfo(AppContext.BaseDirectory);
    while (!File.Exists(Path.Combine(root.FullName, "Crossmember.slnx"))) root = root.Parent!;
    return root;
}
