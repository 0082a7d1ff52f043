/** The text of a PDF as browsers write them: enough to see that figures are printed as text, in no particular order. */
import { inflateSync } from 'node:zlib';

/** The streams of a PDF under the numbers of their objects, inflated where they were deflated. */
function streamsOf(pdf: Buffer, source: string): Map<string, string> {
  const streams = new Map<string, string>();
  for (const found of source.matchAll(/(\d+) 0 obj\s*(<<(?:(?!endobj)[\s\S])*?>>)\s*stream\r?\n/g)) {
    const [all, number = '', head = ''] = found;
    const from = found.index + all.length;
    const raw = pdf.subarray(from, from + Number(/\/Length (\d+)/.exec(head)?.[1]));
    streams.set(number, (head.includes('/FlateDecode') ? inflateSync(raw) : raw).toString('latin1'));
  }
  return streams;
}

interface Font {
  /** Hexadecimal digits of one glyph. */
  readonly width: number;
  readonly letters: ReadonlyMap<number, string>;
}

const number = (hex: string) => Number.parseInt(hex, 16);
const text = (hex: string) => String.fromCodePoint(...(hex.match(/.{4}/g) ?? []).map(number));

/** Which text each glyph of a font stands for, from its table. */
function fontOf(table: string): Font {
  const letters = new Map<number, string>();
  for (const [, block = ''] of table.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, from = '', to = ''] of block.matchAll(/<(\w+)>\s*<(\w+)>/g)) letters.set(number(from), text(to));
  for (const [, block = ''] of table.matchAll(/beginbfrange([\s\S]*?)endbfrange/g))
    for (const [, low = '', high = '', to = ''] of block.matchAll(/<(\w+)>\s*<(\w+)>\s*<(\w+)>/g))
      for (let code = number(low); code <= number(high); code++)
        letters.set(code, String.fromCodePoint(number(to) + code - number(low)));
  return { width: /begincodespacerange\s*<(\w+)>/.exec(table)?.[1]?.length ?? 4, letters };
}

/** The texts that a page shows, one a line. */
function shownIn(page: string, fonts: ReadonlyMap<string, Font>): string[] {
  const lines: string[] = [];
  let font: Font | undefined;
  for (const [block] of page.matchAll(/\bBT\b[\s\S]*?\bET\b/g)) {
    let line = '';
    for (const [, name, hex = ''] of block.matchAll(/\/(F\d+) [\d.]+ Tf|<([\da-fA-F]+)>/g)) {
      if (name) font = fonts.get(name);
      const codes = hex.match(new RegExp(`.{${font?.width ?? 4}}`, 'g')) ?? [];
      line += codes.map((code) => font?.letters.get(number(code)) ?? '').join('');
    }
    lines.push(line);
  }
  return lines;
}

export function pdfText(pdf: Buffer): string {
  const source = pdf.toString('latin1');
  const streams = streamsOf(pdf, source);
  const fonts = new Map<string, Font>();
  for (const [, name = '', object = ''] of source.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const table = new RegExp(`\\n${object} 0 obj(?:(?!endobj)[\\s\\S])*?/ToUnicode (\\d+) 0 R`).exec(source)?.[1];
    if (table && !fonts.has(name)) fonts.set(name, fontOf(streams.get(table) ?? ''));
  }
  return [...streams.values()].flatMap((stream) => shownIn(stream, fonts)).join('\n');
}
