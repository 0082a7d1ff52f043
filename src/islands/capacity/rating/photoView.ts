/** Which part of a picture is looked at, in pixels of the picture. It never leaves the picture. */
export interface View {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** How much of a picture can be enlarged at most. */
export const mostZoom = 12;

/** The whole width of a picture, from its top, in a window of the given shape (height over width). */
export function wholeView({ width, height }: Size, shape: number): View {
  return within({ x: 0, y: 0, width, height: width * shape }, { width, height });
}

/** Brings a view back into the picture; one that is larger than the picture stands centred on it. */
export function within(view: View, { width, height }: Size): View {
  const held = (at: number, seen: number, all: number) =>
    seen >= all ? (all - seen) / 2 : Math.min(all - seen, Math.max(0, at));
  return { ...view, x: held(view.x, view.width, width), y: held(view.y, view.height, height) };
}

/** Moved by a share of what is seen. */
export function panned(view: View, across: number, down: number, size: Size): View {
  return within({ ...view, x: view.x + across * view.width, y: view.y + down * view.height }, size);
}

/** Enlarged by a factor about a point given as shares of the window, so that what is under the finger stays there. */
export function zoomed(view: View, by: number, [across, down]: readonly [number, number], size: Size): View {
  const width = Math.min(size.width, Math.max(size.width / mostZoom, view.width / by));
  const height = (width * view.height) / view.width;
  const x = view.x + across * (view.width - width);
  const y = view.y + down * (view.height - height);
  return within({ x, y, width, height }, size);
}
