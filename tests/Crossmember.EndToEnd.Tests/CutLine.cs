using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;

namespace Crossmember.EndToEnd.Tests;

/// <summary>A way to the desk that can be cut and mended, as the network of a shop is; the desk knows nothing of it.</summary>
public sealed class CutLine : IAsyncDisposable
{
    private readonly TcpListener _door = new(IPAddress.Loopback, 0);
    private readonly ConcurrentBag<Socket> _open = [];
    private readonly int _desk;
    private readonly Task _accepting;
    private volatile bool _cut;

    public CutLine(Uri desk)
    {
        _desk = desk.Port;
        _door.Start();
        _accepting = Accept();
    }

    public string Address => $"http://127.0.0.1:{((IPEndPoint)_door.LocalEndpoint).Port}";

    /// <summary>Whatever is connected is disconnected, and nothing connects until it is mended.</summary>
    public void Cut()
    {
        _cut = true;
        while (_open.TryTake(out var socket)) socket.Dispose();
    }

    public void Mend() => _cut = false;

    public async ValueTask DisposeAsync()
    {
        Cut();
        _door.Stop();
        await _accepting;
    }

    private async Task Accept()
    {
        try
        {
            while (true) _ = Join(await _door.AcceptSocketAsync());
        }
        catch (SocketException)
        {
            // The door was closed.
        }
    }

    private async Task Join(Socket here)
    {
        var there = new Socket(SocketType.Stream, ProtocolType.Tcp);
        _open.Add(here);
        _open.Add(there);
        try
        {
            if (_cut) return;
            await there.ConnectAsync(IPAddress.Loopback, _desk);
            await Task.WhenAny(Pass(here, there), Pass(there, here));
        }
        catch (Exception e) when (e is SocketException or ObjectDisposedException)
        {
            // Cut while connecting.
        }
        finally
        {
            here.Dispose();
            there.Dispose();
        }
    }

    private static async Task Pass(Socket from, Socket to)
    {
        try
        {
            await using var source = new NetworkStream(from);
            await using var target = new NetworkStream(to);
            await source.CopyToAsync(target);
        }
        catch (Exception e) when (e is IOException or ObjectDisposedException)
        {
            // One of the two ends has gone.
        }
    }
}
