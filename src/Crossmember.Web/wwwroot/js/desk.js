// What the browser keeps for the desk: theme, name, units, and what was typed but not yet kept.
(() => {
  const store = {
    get(key) { try { return localStorage.getItem('desk.' + key); } catch { return null; } },
    set(key, value) { try { value === null ? localStorage.removeItem('desk.' + key) : localStorage.setItem('desk.' + key, value); } catch { /* a private window keeps nothing */ } },
  };

  function switchTheme() {
    const shown = document.documentElement.dataset.theme ?? (matchMedia('(prefers-color-scheme: dark)').matches ? 'dark' : 'light');
    const next = shown === 'dark' ? 'light' : 'dark';
    chooseTheme(next);
  }

  // 'light', 'dark', or null: as the device has it. Every choice on the page, in every window of this browser, shows the same.
  let theme = store.get('theme');

  function chooseTheme(chosen) {
    store.set('theme', theme = chosen);
    showTheme();
  }

  function showTheme() {
    if (theme === 'light' || theme === 'dark') document.documentElement.dataset.theme = theme;
    else delete document.documentElement.dataset.theme;
    for (const choice of document.querySelectorAll('[data-theme-choice]')) choice.checked = choice.dataset.themeChoice === (theme ?? 'device');
  }

  showTheme();
  addEventListener('DOMContentLoaded', showTheme);
  addEventListener('storage', e => { if (e.key === 'desk.theme') { theme = e.newValue; showTheme(); } });
  addEventListener('change', e => { const choice = e.target.dataset?.themeChoice; if (choice) chooseTheme(choice === 'device' ? null : choice); });

  function device() {
    let id = store.get('device');
    if (!id) store.set('device', id = 'browser-' + Math.random().toString(36).slice(2, 8));
    return id;
  }

  window.desk = {
    kept: () => ({ person: store.get('person'), device: device(), measure: store.get('measure') }),
    keep(person, measure) { store.set('person', person); store.set('measure', measure); },
    // Puts back what was typed before a reload or a lost connection, and tells the page so. A field that is never empty says that the draft goes over what stands in it.
    restore() {
      for (const field of document.querySelectorAll('[data-draft]')) {
        const draft = store.get('draft.' + field.dataset.draft);
        if (draft && draft !== field.value && (!field.value || 'draftOver' in field.dataset)) { field.value = draft; field.dispatchEvent(new Event('input', { bubbles: true })); }
      }
    },
    showTheme,
    forget(key) { store.set('draft.' + key, null); },
    // Every draft whose key begins so.
    forgetAll(start) {
      try { for (const key of Object.keys(localStorage)) if (key.startsWith('desk.draft.' + start)) localStorage.removeItem(key); } catch { /* a private window keeps nothing */ }
    },
    // What stands in a large field comes over in pieces: it may be longer than one message.
    said(id) { return new Blob([document.getElementById(id)?.value ?? '']); },
    write(id, text) { const field = document.getElementById(id); if (field) { field.value = text; field.dispatchEvent(new Event('input', { bubbles: true })); } },
  };

  addEventListener('input', e => { if (e.target.dataset?.draft) store.set('draft.' + e.target.dataset.draft, e.target.value || null); });

  // What was typed while the line was cut has reached nobody: it is said again as soon as the desk answers. The event does not bubble.
  document.addEventListener('components-reconnect-state-changed', e => {
    if (e.detail?.state !== 'hide') return;
    for (const field of document.querySelectorAll('[data-draft], [data-retell]')) if (field.value) field.dispatchEvent(new Event('input', { bubbles: true }));
  }, true);

  // An empty link leads to the base of the site, not to the page one is on.
  document.addEventListener('click', e => {
    if (!e.target.closest('#components-reconnect-modal a')) return;
    e.preventDefault();
    location.reload();
  }, true);

  addEventListener('click', e => {
    if (e.target.closest('[data-theme-toggle]')) switchTheme();
    if (e.target.closest('[data-keys]')) document.getElementById('keys')?.showModal();
  });

  // In a list that scrolls by itself the item that is open stays in sight; where another one is opened further down the page, it shows from its head.
  let shownItem;
  new MutationObserver(() => {
    const open = document.querySelector('.items a.current'), list = open?.closest('.items');
    if (!open || open === shownItem) return;
    const top = open.getBoundingClientRect().top - list.getBoundingClientRect().top;
    if (list.scrollHeight > list.clientHeight && (top < 0 || top > list.clientHeight - 60)) list.scrollTop += top - list.clientHeight / 3;
    const head = document.getElementById('item-title');
    if (shownItem && head && head.getBoundingClientRect().bottom < 0) head.scrollIntoView({ block: 'start' });
    shownItem = open;
  }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['class'] });

  // On a narrow screen the answer stands below the question.
  addEventListener('click', e => {
    const target = document.getElementById(e.target.closest('[data-scroll]')?.dataset.scroll);
    if (target && target.getBoundingClientRect().top > innerHeight * 0.8) target.scrollIntoView({ behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
  });

  // A list with data-arrows is one stop of Tab: arrows, Home and End go through its links.
  addEventListener('keydown', e => {
    const list = e.target.closest('[data-arrows]');
    if (!list || e.ctrlKey || e.metaKey || e.altKey) return;
    const links = [...list.querySelectorAll('a')], at = links.indexOf(e.target);
    const way = list.dataset.arrows, onward = way === 'all' ? { ArrowRight: at + 1, ArrowLeft: at - 1 } : {};
    const fold = way === 'folds' && e.target.closest('li')?.querySelector('.fold');
    // In a tree left folds what lies beneath an item, right opens it.
    if (fold && fold.getAttribute('aria-expanded') === { ArrowLeft: 'true', ArrowRight: 'false' }[e.key]) { e.preventDefault(); fold.click(); return; }
    const next = { ArrowDown: at + 1, ArrowUp: at - 1, Home: 0, End: links.length - 1, ...onward }[e.key];
    if (next === undefined || !links[next]) return;
    e.preventDefault();
    links[next].focus();
  });

  addEventListener('keydown', e => {
    if (e.ctrlKey || e.metaKey || e.altKey || e.target.closest('input, textarea, select')) return;
    const search = document.querySelector('input[type=search]');
    // A page says which of its buttons and links a key presses.
    const named = [...document.querySelectorAll('[data-key]')].find(x => x.dataset.key === e.key);
    if (named) { e.preventDefault(); named.click(); }
    const place = { t: '', b: 'builds', c: 'bench' }[e.key];
    if (place !== undefined && !named) location.href = document.baseURI + place;
    if (e.key === '/' && !search) { e.preventDefault(); location.href = document.baseURI + 'search'; }
    if (e.key === '/' && search) { e.preventDefault(); document.querySelector('.items')?.classList.add('open'); search.focus(); }
    if (e.key === '?') { e.preventDefault(); document.getElementById('keys')?.showModal(); }
  });
})();
