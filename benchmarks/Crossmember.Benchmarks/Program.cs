using BenchmarkDotNet.Running;
using Crossmember.Benchmarks;

if (args is ["look"])
{
    // Rough figures in seconds instead of minutes, to see where one stands while working.
    Look.Run();
    return;
}
if (args is ["shop", var folder, var demo])
{
    BigShop.Make(folder, demo);
    return;
}
if (args is ["search"])
{
    PartsSearchLook.Run();
    return;
}
if (args is ["check"])
{
    DemoCheck.Look();
    return;
}
if (args is ["brakes"])
{
    BrakeChain.Look();
    return;
}
BenchmarkSwitcher.FromAssembly(typeof(RippleBenchmarks).Assembly).Run(args);
