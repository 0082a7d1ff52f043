/** Reads large tables off the page: a text or a file comes in, with what is said of it; what was made of it goes out. */
import { textOf } from '../../job/tableImport/decode.ts';
import { type Imported, importTable, type Said } from '../../job/tableImport/index.ts';

export interface Ask {
  readonly ticket: number;
  /** Absent where only something else is said of what was sent before. */
  readonly source?: string | Blob;
  readonly said: Said;
}

/** On the way: the text was parted into so many lines, which are now looked at. */
export interface OnTheWay {
  readonly ticket: number;
  readonly lines: number;
}

export interface Answer {
  readonly ticket: number;
  /** `null`: it could not be read at all. */
  readonly imported: Imported | null;
}

let text = '';

addEventListener('message', ({ data }: MessageEvent<Ask>) => {
  void answer(data).then((imported) => postMessage({ ticket: data.ticket, imported } satisfies Answer));
});

async function answer({ ticket, source, said }: Ask): Promise<Imported | null> {
  try {
    if (typeof source === 'string') text = source;
    else if (source) text = textOf(new Uint8Array(await source.arrayBuffer()));
    return importTable(text, said, (lines) => postMessage({ ticket, lines } satisfies OnTheWay));
  } catch {
    return null;
  }
}
