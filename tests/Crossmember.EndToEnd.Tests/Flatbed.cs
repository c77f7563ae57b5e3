using System.Text;
using System.Text.Json.Nodes;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The invented flatbed under a fresh id for each test, since all tests share one desk.</summary>
public sealed record Flatbed(string Id, string Title, byte[] File)
{
    private static int s_next;

    // Suites run side by side on one desk, and two imports at once would both bring the shop's facts: the later is told to come again.
    private static readonly SemaphoreSlim s_one = new(1);

    public string Decisions => $"/builds/{Id}/decisions";

    public static Flatbed New() => New("", "");

    /// <summary>One that stands before the others in every list.</summary>
    public static Flatbed First() => New("", "", "A first flatbed, number");

    /// <summary>With one word of its file put for another.</summary>
    public static Flatbed New(string word, string another, string named = "Bracken flatbed number")
    {
        using var reader = new StreamReader(typeof(Flatbed).Assembly.GetManifestResourceStream("bracken.json")!);
        var text = reader.ReadToEnd();
        var sheet = JsonNode.Parse(word.Length == 0 ? text : text.Replace(word, another, StringComparison.Ordinal))!;
        var id = $"bracken-{Interlocked.Increment(ref s_next)}";
        var title = $"{named} {id[8..]}";
        (sheet["id"], sheet["title"]) = (id, title);
        return new(id, title, Encoding.UTF8.GetBytes(sheet.ToJsonString()));
    }

    /// <summary>Imports itself by the door for programs.</summary>
    public async Task<Flatbed> On(WebDesk desk)
    {
        using var client = new HttpClient { BaseAddress = desk.Address };
        using var body = new ByteArrayContent(File) { Headers = { ContentType = new("application/json") } };
        await s_one.WaitAsync(TestContext.Current.CancellationToken);
        try
        {
            var answer = await client.PostAsync("/api/import", body, TestContext.Current.CancellationToken);
            Assert.True(answer.IsSuccessStatusCode, await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
        }
        finally
        {
            s_one.Release();
        }
        return this;
    }
}
