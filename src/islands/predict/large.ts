/** A question shown large, for a projector: the page follows `data-large` on its root, and takes the whole screen where it may. */
import { useEffect } from 'preact/hooks';

/** Refused, or not there: then the question is large in the window that it has. */
export function takeFullScreen(): void {
  void document.documentElement.requestFullscreen?.().catch(() => {});
}

export function leaveFullScreen(): void {
  if (document.fullscreenElement) void document.exitFullscreen().catch(() => {});
}

/** Marks the page as large while a question is; who leaves the whole screen, or presses Escape, leaves it too. */
export function useLarge(isLarge: boolean, leave: () => void): void {
  useEffect(() => {
    if (!isLarge) return;
    const root = document.documentElement;
    root.toggleAttribute('data-large', true);
    const screen = () => document.fullscreenElement || leave();
    const key = ({ key: pressed }: KeyboardEvent) => pressed === 'Escape' && leave();
    document.addEventListener('fullscreenchange', screen);
    document.addEventListener('keydown', key);
    return () => {
      document.removeEventListener('fullscreenchange', screen);
      document.removeEventListener('keydown', key);
      root.toggleAttribute('data-large', false);
    };
  }, [isLarge]);
}
