// Marks on the drawing of a vehicle are picked, dragged and nudged; what was done is told to the page as one word in a field of the drawing.
(() => {
  const every = 90; // ms between two words while a mark is dragged
  const reach = 22; // px: half of a finger
  let drag = null;

  function tell(svg, ...word) {
    const field = (svg?.closest('.masses') ?? document.querySelector('.masses'))?.querySelector('[data-told]');
    if (!field) return;
    field.value = word.join('|');
    field.dispatchEvent(new Event('input', { bubbles: true }));
  }

  // From the screen to the drawing's own units.
  function spot(svg, e) {
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM().inverse());
    return { x: p.x, y: p.y, view: p.y < +svg.dataset.split ? 'side' : 'plan' };
  }

  const middle = mark => { const [, x, y] = mark.getAttribute('transform').match(/translate\((\S+) (\S+)\)/); return { x: +x, y: +y }; };

  // Marks lie over each other: the nearest is meant, and of those at one place the one in hand.
  function nearest(svg, at) {
    const within = reach / svg.getScreenCTM().a;
    let best = null, least = Infinity;
    for (const mark of svg.querySelectorAll(`[data-mass][data-view="${at.view}"]`)) {
      const m = middle(mark), far = Math.hypot(m.x - at.x, m.y - at.y) - (mark.classList.contains('picked') ? 3 : 0);
      if (far < least && far < Math.max(within, mark.querySelector('.body').getBBox().width / 2)) [best, least] = [mark, far];
    }
    return best;
  }

  function meters(svg, x, y, view) {
    const d = svg.dataset, along = (x - d.x) / d.scale, other = ((view === 'side' ? d.side : d.plan) - y) / d.scale;
    return [along.toFixed(4), other.toFixed(4)];
  }

  const marksOf = () => drag.svg.querySelectorAll(`[data-mass="${CSS.escape(drag.key)}"][data-view="${drag.view}"]`);

  addEventListener('pointerdown', e => {
    const svg = e.target.closest?.('svg[data-places]');
    if (!svg || e.button !== 0) return;
    const at = spot(svg, e), mark = nearest(svg, at);
    if (!mark) { if (svg.dataset.places === 'move') tell(svg, 'spot', at.view, ...meters(svg, at.x, at.y, at.view)); return; }
    const m = middle(mark);
    e.preventDefault();
    drag = { svg, key: mark.dataset.mass, view: at.view, id: e.pointerId, from: at, off: { x: m.x - at.x, y: m.y - at.y }, moved: false, told: 0, movable: svg.dataset.places === 'move' };
    // The mark is drawn anew as soon as it is in hand: the drawing itself must hold the finger.
    svg.setPointerCapture(e.pointerId);
  });

  // A finger that begins on a mark must not scroll the page. Groups within a drawing take no touch-action of their own, so each drawing refuses by itself; elsewhere nothing has to wait for this script.
  const held = new WeakSet();
  function hold() {
    for (const svg of document.querySelectorAll('svg[data-places=move]')) {
      if (held.has(svg)) continue;
      held.add(svg);
      svg.addEventListener('touchstart', e => { if (e.touches.length === 1 && svg.dataset.places === 'move' && nearest(svg, spot(svg, e.touches[0]))) e.preventDefault(); }, { passive: false });
    }
  }
  new MutationObserver(hold).observe(document, { subtree: true, childList: true });

  addEventListener('pointermove', e => {
    if (!drag?.movable || e.pointerId !== drag.id) return;
    const at = spot(drag.svg, e);
    if (!drag.moved && Math.hypot(at.x - drag.from.x, at.y - drag.from.y) < 4) return;
    drag.moved = true;
    [drag.x, drag.y] = [at.x + drag.off.x, at.y + drag.off.y];
    for (const mark of marksOf()) mark.style.transform = `translate(${drag.x}px, ${drag.y}px)`;
    if (e.timeStamp - drag.told < every) return;
    drag.told = e.timeStamp;
    tell(drag.svg, 'drag', drag.view, drag.key, ...meters(drag.svg, drag.x, drag.y, drag.view));
  });

  function end(e, drops) {
    if (!drag || e.pointerId !== drag.id) return;
    const done = drag, marks = marksOf();
    drag = null;
    if (done.moved && drops) tell(done.svg, 'drop', done.view, done.key, ...meters(done.svg, done.x, done.y, done.view));
    else if (done.moved) tell(done.svg, 'back');
    else if (drops) tell(done.svg, 'pick', done.view, done.key);
    // The page draws it where it is now; until then it stays where the hand left it.
    setTimeout(() => {
      for (const mark of done.svg.querySelectorAll(`[data-mass="${CSS.escape(done.key)}"]`)) mark.style.transform = '';
      done.svg.querySelector(`.picked[data-view="${done.view}"]`)?.focus({ preventScroll: true });
    }, 250);
  }

  addEventListener('pointerup', e => end(e, true));
  addEventListener('pointercancel', e => end(e, false));

  addEventListener('keydown', e => {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    const mark = e.target.closest?.('.mark.picked[tabindex]'), field = e.target.closest?.('[data-nudge]');
    if (!mark && !field) return;
    const up = { ArrowUp: 1, ArrowDown: -1 }[e.key], along = { ArrowRight: 1, ArrowLeft: -1 }[e.key], times = e.shiftKey ? 10 : 1;
    const svg = mark?.closest('svg');
    if (field && up) tell(svg, 'nudge', field.dataset.nudge, up * times);
    else if (mark && along) tell(svg, 'nudge', 'x', along * times);
    else if (mark && up) tell(svg, 'nudge', mark.dataset.view === 'side' ? 'z' : 'y', up * times);
    else if (mark && e.key === 'Enter') tell(svg, 'keep');
    else if (e.key === 'Escape') tell(svg, 'back');
    else return;
    e.preventDefault();
  });

  addEventListener('click', e => { if (e.target.closest?.('[data-print]')) print(); });
})();
