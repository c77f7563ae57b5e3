using Microsoft.Playwright;

namespace Crossmember.PageBenchmarks;

/// <summary>From what a person does to the changed page, timed inside the page, to the frame after the change.</summary>
internal sealed class Deciding(IPage page, Figures figures)
{
    private const string Timed = """
        ([act, seen]) => new Promise((done, fail) => {
          const before = document.querySelector(seen)?.textContent ?? '';
          const began = performance.now();
          const watch = new MutationObserver(() => {
            if ((document.querySelector(seen)?.textContent ?? '') === before) return;
            watch.disconnect();
            requestAnimationFrame(() => setTimeout(() => done(performance.now() - began)));
          });
          watch.observe(document.body, { childList: true, subtree: true, characterData: true });
          setTimeout(() => fail(new Error('nothing changed in ' + seen)), 20000);
          const target = document.querySelector(act[0]);
          if (act[1] === 'click') target.click();
          else if (act[1] === 'focus') target.focus();
          else target.dispatchEvent(new MouseEvent('mouseenter'));
        })
        """;

    public async Task Run(int times)
    {
        var options = await page.Locator(".option:not(.chosen)").EvaluateAllAsync<string[]>("o => o.map(x => x.dataset.option)");
        // Never the same option twice running: nothing would change.
        var turn = 0;
        string Next() => options[turn++ % options.Length];
        // The first look of each option is worked out, later ones are kept: both are told.
        for (var i = 0; i < options.Length; i++) figures.Add("pointer on an option to its knock-on, first time", "ms", await Time(Card(Next()), "enter", "#knock"));
        for (var i = 0; i < times; i++) figures.Add("pointer on an option to its knock-on, again", "ms", await Time(Card(Next()), "enter", "#knock"));
        for (var i = 0; i < times; i++) figures.Add("focus on an option to its knock-on, again", "ms", await Time($"{Card(Next())} button.look", "focus", "#knock"));
        for (var i = 0; i < times; i++) figures.Add("click on Choose to the kept message", "ms", await Time($"{Card(Next())} footer button", "click", ".news"));
        for (var i = 0; i < times; i++) figures.Add("peer: the other units, one round trip and the page drawn anew", "ms", await Time(".tools button", "click", ".tools button"));
    }

    private static string Card(string option) => $".option[data-option='{option}']";

    private async Task<double> Time(string target, string how, string seen)
    {
        var took = await page.EvaluateAsync<double>(Timed, new object[] { new[] { target, how }, seen });
        await page.WaitForTimeoutAsync(100);
        return took;
    }
}
