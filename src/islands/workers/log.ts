/** Reads and judges records off the page: a file comes in, then what was confirmed of it; what was made of it goes out. */
import { type JudgedLog, type JudgeRefusal, judgeLog, type LogSaid } from '../../job/log/judgeLog.ts';
import { type LogHead, type LogRefusal, type OpenLog, openLog } from '../../job/log/openLog.ts';
import { textOf } from '../../job/tableImport/decode.ts';

export type LogAsk =
  | { readonly ticket: number; readonly open: Blob }
  | { readonly ticket: number; readonly said: LogSaid };

/** A record without its rows: those stay here. */
export interface LogOpened {
  readonly heads: readonly LogHead[];
  readonly rows: number;
  readonly temperatures: 'degF' | 'degC';
  readonly humidityAs: 'relativeHumidity' | 'wetBulb';
}

export interface LogReply {
  readonly ticket: number;
  readonly opened?: LogOpened | LogRefusal;
  readonly judged?: JudgedLog | JudgeRefusal;
}

let log: OpenLog | null = null;

addEventListener('message', ({ data }: MessageEvent<LogAsk>) => {
  void reply(data).then((answer) => postMessage({ ticket: data.ticket, ...answer } satisfies LogReply));
});

async function reply(ask: LogAsk): Promise<Omit<LogReply, 'ticket'>> {
  try {
    if ('said' in ask) return { judged: log ? judgeLog(log, ask.said) : 'noRows' };
    const opened = openLog(textOf(new Uint8Array(await ask.open.arrayBuffer())));
    if (typeof opened === 'string') return { opened };
    log = opened;
    const { heads, rows, temperatures, humidityAs } = opened;
    return { opened: { heads, rows: rows.length, temperatures, humidityAs } };
  } catch {
    return { opened: 'notText', judged: 'noRows' };
  }
}
