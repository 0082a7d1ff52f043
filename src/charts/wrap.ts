import { textWidth } from './box.ts';

/** A text in lines that fit into a room, px, broken at its spaces. A word that is too long for it stands alone. */
export function wrapped(text: string, room: number, letter: number): string[] {
  const lines: string[] = [];
  for (const part of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${part}`.trim();
    if (lines.length > 0 && textWidth(longer, letter) <= room) lines[lines.length - 1] = longer;
    else lines.push(part);
  }
  return lines;
}
