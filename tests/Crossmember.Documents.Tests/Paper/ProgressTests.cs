using Crossmember.Documents.Paper;

namespace Crossmember.Documents.Tests.Paper;

public sealed class ProgressTests
{
    private sealed class Kept : IProgress<Step>
    {
        public List<Step> Steps { get; } = [];

        public void Report(Step value) => Steps.Add(value);
    }

    public static TheoryData<string> Endings => [".pdf", ".html"];

    private static Document Document => ReadBack.Of([.. Enumerable.Range(0, 400).Select(i => new Block.Paragraph($"Paragraph {i}"))]);

    [Theory, MemberData(nameof(Endings))]
    public void Progress_only_rises_and_ends_at_the_whole(string ending)
    {
        var kept = new Kept();
        PaperForm.Of("x" + ending)!.Write(Document, PageSize.A4, kept, TestContext.Current.CancellationToken);
        Assert.True(kept.Steps.Count > 10);
        Assert.Equal(kept.Steps.Select(s => s.Share).Order(), kept.Steps.Select(s => s.Share));
        Assert.Equal(1, kept.Steps[^1].Share);
        Assert.All(kept.Steps, s => Assert.NotEqual("", s.Doing));
    }

    [Theory, MemberData(nameof(Endings))]
    public void It_stops_when_it_is_told_to(string ending)
    {
        using var stop = new CancellationTokenSource();
        var steps = new Stopping(stop, 5);
        Assert.Throws<OperationCanceledException>(() => PaperForm.Of("x" + ending)!.Write(Document, PageSize.A4, steps, stop.Token));
        Assert.InRange(steps.Seen, 5, 6);
    }

    [Fact]
    public void Another_ending_is_no_form()
    {
        Assert.Null(PaperForm.Of("x.docx"));
        Assert.Null(PaperForm.Of("x"));
        Assert.Same(PaperForm.Pdf, PaperForm.Of("X.PDF"));
    }

    private sealed class Stopping(CancellationTokenSource source, int after) : IProgress<Step>
    {
        public int Seen { get; private set; }

        public void Report(Step value)
        {
            if (++Seen == after) source.Cancel();
        }
    }
}
