/** The frame's script: the two choices, the folds of the head, the keyboard's height and the offline worker. */

const root = document.documentElement;

function remember(key: string, value: string | null) {
  try {
    if (value === null) localStorage.removeItem(`ton-for-ton.${key}`);
    else localStorage.setItem(`ton-for-ton.${key}`, value);
  } catch {
    // The choice then holds for this page only.
  }
}

function onChoice(name: string, now: string, take: (value: string) => void) {
  for (const input of document.querySelectorAll<HTMLInputElement>(`input[name="${name}"]`)) {
    input.checked = input.value === now;
    input.addEventListener('change', () => take(input.value));
  }
}

onChoice('frame-units', root.dataset.units ?? '', (units) => {
  root.dataset.units = units;
  remember('units', units);
  document.dispatchEvent(new CustomEvent('unitschange'));
});
onChoice('frame-light', root.dataset.theme ?? 'auto', (light) => {
  if (light === 'auto') delete root.dataset.theme;
  else root.dataset.theme = light;
  remember('light', light === 'auto' ? null : light);
});

const folds = document.querySelectorAll<HTMLDetailsElement>('.frame-fold');
for (const type of ['click', 'focusin', 'keydown'] as const) {
  document.addEventListener(type, (event) => {
    const byKey = event instanceof KeyboardEvent;
    if (byKey && event.key !== 'Escape') return;
    for (const fold of folds) {
      const inside = fold.contains(event.target as Node);
      if (!fold.open || inside !== byKey) continue;
      fold.open = false;
      if (byKey) fold.querySelector('summary')?.focus();
    }
  });
}

// Some browsers lay the keyboard over the page: what is fixed to the bottom must stand above it.
visualViewport?.addEventListener('resize', () => {
  const hidden = window.innerHeight - visualViewport!.height * visualViewport!.scale;
  root.style.setProperty('--keyboard', `${Math.max(0, Math.round(hidden))}px`);
});

const say = (selector: string) => {
  const place = document.querySelector<HTMLElement>(selector);
  if (place) place.hidden = false;
  return place;
};

async function keepOffline(base: string) {
  const registration = await navigator.serviceWorker.register(`${base}sw.js`);
  const offer = () => {
    const { waiting } = registration;
    const ask = waiting && navigator.serviceWorker.controller && say('.frame-update');
    ask?.querySelector('button')?.addEventListener('click', () => {
      navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
      waiting?.postMessage('update');
    });
  };
  offer();
  registration.addEventListener('updatefound', () => registration.installing?.addEventListener('statechange', offer));
  await navigator.serviceWorker.ready;
  const saved = await (await caches.match(`${base}saved`))?.text();
  const place = saved && say('.frame-saved');
  if (place) {
    const day = new Date(saved).toLocaleDateString(document.documentElement.lang, { day: 'numeric', month: 'long' });
    place.append(`: ${day}.`);
  }
}

if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  const idle = window.requestIdleCallback ?? ((run: () => void) => setTimeout(run, 500));
  addEventListener('load', () => idle(() => void keepOffline(import.meta.env.BASE_URL).catch(() => {})));
}
