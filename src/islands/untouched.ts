/**
 * Nothing may move between a finger's coming down and the click that it makes: what arrives from elsewhere meanwhile is shown
 * after that.
 */
let pressed = false;
let waiting: readonly (() => void)[] = [];
/** Some phones make the click that long after the finger has gone up, ms. */
const clickComesWithin = 350;

function rest(): void {
  pressed = false;
  const due = waiting;
  waiting = [];
  for (const work of due) work();
}

if (typeof document !== 'undefined') {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const after = (wait: number) => () => {
    clearTimeout(timer);
    timer = setTimeout(rest, wait);
  };
  const press = () => {
    clearTimeout(timer);
    pressed = true;
  };
  const heard = [
    ['pointerdown', press],
    ['pointerup', after(clickComesWithin)],
    ['pointercancel', after(clickComesWithin)],
    ['click', after(0)],
  ] as const;
  for (const [type, hear] of heard) document.addEventListener(type, hear, { capture: true });
}

/** Does it now, or as soon as no finger and no mouse button is down. */
export function whenUntouched(work: () => void): void {
  if (pressed) waiting = [...waiting, work];
  else work();
}
