/** What the frame does once a page stands: the two choices, the folds of the head, the keyboard, the offline worker. */

const root = document.documentElement;

/** Starts all of it, once a page. */
export function startFrame(): void {
  choose('units', root.dataset.units ?? '', (units) => {
    root.dataset.units = units;
    remember('units', units);
    document.dispatchEvent(new CustomEvent('unitschange'));
  });
  choose('light', root.dataset.theme ?? 'auto', (light) => {
    if (light === 'auto') delete root.dataset.theme;
    else root.dataset.theme = light;
    remember('light', light === 'auto' ? null : light);
  });
  for (const type of ['click', 'focusin', 'keydown'] as const) document.addEventListener(type, closeFolds);
  visualViewport?.addEventListener('resize', liftBar);
  if (import.meta.env.PROD && 'serviceWorker' in navigator) {
    const idle = window.requestIdleCallback ?? ((run: () => void) => setTimeout(run, 500));
    addEventListener('load', () => idle(() => void keepOffline(import.meta.env.BASE_URL).catch(() => {})));
  }
}

function choose(name: string, now: string, take: (value: string) => void) {
  for (const input of document.querySelectorAll<HTMLInputElement>(`[name=frame-${name}]`)) {
    input.checked = input.value === now;
    input.addEventListener('change', () => take(input.value));
  }
}

function remember(name: string, value: string | null) {
  const key = `ton-for-ton.${name}`;
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, value);
  } catch {
    // The choice then holds for this page only.
  }
}

/** A fold of the head closes on Escape inside it, and when a press or the focus goes elsewhere. */
function closeFolds(event: Event) {
  const byKey = event instanceof KeyboardEvent;
  if (byKey && event.key !== 'Escape') return;
  for (const fold of document.querySelectorAll<HTMLDetailsElement>('.frame-fold[open]')) {
    if (fold.contains(event.target as Node) !== byKey) continue;
    fold.open = false;
    if (byKey) fold.querySelector('summary')?.focus();
  }
}

/** Some browsers lay the keyboard over the page: what is fixed to the bottom must stand above it. */
function liftBar() {
  const { height, scale } = visualViewport!;
  root.style.setProperty('--keyboard', `${Math.max(0, Math.round(innerHeight - height * scale))}px`);
}

function show(selector: string) {
  const place = document.querySelector<HTMLElement>(selector);
  if (place) place.hidden = false;
  return place;
}

async function keepOffline(base: string) {
  const { serviceWorker } = navigator;
  const registration = await serviceWorker.register(`${base}sw.js`);
  const offer = () => {
    const { waiting } = registration;
    if (!waiting || !serviceWorker.controller) return;
    show('.frame-update')?.addEventListener('click', () => {
      serviceWorker.addEventListener('controllerchange', () => location.reload());
      waiting.postMessage('update');
    });
  };
  offer();
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', offer));
  await serviceWorker.ready;
  const saved = await (await caches.match(`${base}saved`))?.text();
  if (!saved) return;
  const day = new Date(saved).toLocaleDateString(root.lang, { day: 'numeric', month: 'long' });
  show('.frame-saved')?.append(`: ${day}.`);
}
