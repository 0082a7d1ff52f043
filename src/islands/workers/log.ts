/** Reads and judges records off the page: files come in, then what was confirmed of them; what was made of them goes out. */
import { type JudgedLog, type JudgeRefusal, judgeLog, type LogSaid } from '../../job/log/judgeLog.ts';
import { type LogHead, type LogRefusal, type OpenLog, openLog } from '../../job/log/openLog.ts';
import { type PairedRecords, type PairRefusal, type PairSaid, pairRecords } from '../../job/log/pairRecords.ts';
import { rolesOfTwo } from '../../job/log/pairRoles.ts';
import { textOf } from '../../job/tableImport/decode.ts';

/** `together`: the records of both probes, which stood in one air. */
export type LogTask =
  | { readonly open: readonly File[]; readonly together: boolean }
  | { readonly said: LogSaid }
  | { readonly pair: PairSaid };
export type LogAsk = LogTask & { readonly ticket: number };

/** A record without its rows: those stay here. */
export type LogOpened = Omit<OpenLog, 'rows' | 'firstLine' | 'comma'> & { readonly rows: number };

export interface LogReply {
  readonly ticket: number;
  /** On the way: so many rows were parted, and are looked at now. */
  readonly rows?: number;
  readonly opened?: readonly LogOpened[] | LogRefusal;
  readonly judged?: JudgedLog | JudgeRefusal;
  readonly paired?: PairedRecords | PairRefusal;
}

let logs: readonly OpenLog[] = [];

addEventListener('message', ({ data }: MessageEvent<LogAsk>) => {
  const { ticket } = data;
  const send = (answer: Omit<LogReply, 'ticket'>) => postMessage({ ticket, ...answer } satisfies LogReply);
  void reply(data, (rows) => send({ rows })).then(send, () => send(failed(data)));
});

const rowsOf = () => logs.reduce((sum, { rows }) => sum + rows.length, 0);

async function reply(ask: LogTask, onTheWay: (rows: number) => void): Promise<Omit<LogReply, 'ticket'>> {
  if ('open' in ask) return { opened: await open(ask.open, ask.together) };
  onTheWay(rowsOf());
  if ('pair' in ask) return { paired: pairRecords(logs, ask.pair) };
  const [log] = logs;
  return { judged: log ? judgeLog(log, ask.said) : 'noRows' };
}

function failed(ask: LogTask): Omit<LogReply, 'ticket'> {
  if ('open' in ask) return { opened: 'notText' };
  return 'pair' in ask ? { paired: 'noPairs' } : { judged: 'noRows' };
}

async function open(files: readonly File[], together: boolean): Promise<readonly LogOpened[] | LogRefusal> {
  const found: OpenLog[] = [];
  for (const file of files) {
    const one = openLog(textOf(new Uint8Array(await file.arrayBuffer())), together);
    if (typeof one === 'string') return one;
    found.push(one);
  }
  logs = found;
  const heads: readonly (readonly LogHead[])[] = found.map((one) => one.heads);
  const roles =
    together && found.length === 2
      ? rolesOfTwo(heads.map((some, index) => ({ name: files[index]?.name ?? '', heads: some })))
      : heads.map((some) => some.map(({ role }) => role));
  return found.map(({ rows, temperatures, ownUnits, pressures, humidityAs }, index) => ({
    heads: (heads[index] ?? []).map((head, at) => ({ ...head, role: roles[index]?.[at] ?? 'none' })),
    rows: rows.length,
    temperatures,
    ownUnits,
    pressures,
    humidityAs,
  }));
}
