/**
 * Compares two ways of working the same thing out. Batches of both, each about 80 µs long, take turns, so that whatever
 * else the machine does falls on both alike; of 2 000 rounds the fastest batch of each counts.
 */
export interface Contest<Input> {
  readonly title: string;
  /** Varying, so that nothing can be worked out once and kept. */
  readonly inputs: readonly Input[];
  readonly ours: (input: Input) => number;
  readonly theirs: (input: Input) => number;
}

export interface Score {
  readonly title: string;
  /** Nanoseconds a call. */
  readonly ours: number;
  readonly theirs: number;
  readonly ratio: number;
}

const batchTime = 0.08;
const rounds = 2000;

/** What the calls returned ends here, so that none of them can be left out. */
export let sink = 0;

/** One contestant: calls in a row over the inputs, going on where the last batch stopped. */
class Runner<Input> {
  private readonly inputs: readonly Input[];
  private readonly run: (input: Input) => number;
  private next = 0;
  size = 1;
  fastest = Number.POSITIVE_INFINITY;

  constructor(inputs: readonly Input[], run: (input: Input) => number) {
    this.inputs = inputs;
    this.run = run;
  }

  /** ms for one batch. */
  batch(): number {
    const { inputs, run, size } = this;
    let i = this.next;
    let sum = 0;
    const start = performance.now();
    for (let n = 0; n < size; n++) {
      sum += run(inputs[i] as Input);
      i = i + 1 === inputs.length ? 0 : i + 1;
    }
    const time = performance.now() - start;
    this.next = i;
    sink += sum;
    return time;
  }

  warmUp(): void {
    const until = performance.now() + 300;
    while (performance.now() < until) {
      const time = this.batch();
      if (time < batchTime) this.size = Math.ceil(this.size * 1.1);
      else if (time > 1.5 * batchTime) this.size = Math.max(1, Math.floor(this.size * 0.9));
    }
  }
}

export function contest<Input>({ title, inputs, ours, theirs }: Contest<Input>): Score {
  const a = new Runner(inputs, ours);
  const b = new Runner(inputs, theirs);
  a.warmUp();
  b.warmUp();
  for (let round = 0; round < rounds; round++) {
    a.fastest = Math.min(a.fastest, a.batch() / a.size);
    b.fastest = Math.min(b.fastest, b.batch() / b.size);
  }
  return { title, ours: a.fastest * 1e6, theirs: b.fastest * 1e6, ratio: b.fastest / a.fastest };
}

export function print(scores: readonly Score[]): void {
  for (const { title, ours, theirs, ratio } of scores) {
    const times = `${ours.toFixed(0).padStart(6)} ns  against ${theirs.toFixed(0).padStart(6)} ns`;
    console.log(`${title.padEnd(48)} ${times}  ${ratio.toFixed(1).padStart(5)} times as fast`);
  }
}
