/** The picture of a record and of the window that is looked at in it. */
export const trySettling = {
  caption:
    'An invented record of an hour from the start. The curve is the cooling worked out from both probes; thick where it is looked at. Upright lines: no window may begin there yet.',
  seen: 'Looked at after',
  minutes: (number: string) => `${number}\u00a0min`,
  time: 'minutes from the start',
  share: 'cooling, % of that at the end',
  change: 'a damper is opened',
  waiting: 'wait',
  table: 'The window that ends here',
  rows: { window: 'Window, minutes', notBefore: 'None before minute', drift: 'Drift of the cooling in it' },
  to: ' to ',
  said: {
    none: (from: string, to: string, drift: string) =>
      `Minutes ${from} to ${to}: steady. The cooling drifts by ${drift} only, and what is read here may be used.`,
    tooEarly: (from: string, to: string, notBefore: string) =>
      `Minutes ${from} to ${to}: too early. No window may begin before minute ${notBefore}.`,
    range: (from: string, to: string) => `Minutes ${from} to ${to}: not steady, the temperatures spread too far.`,
    trend: (from: string, to: string, drift: string) =>
      `Minutes ${from} to ${to}: not steady yet, the cooling still drifts by ${drift}.`,
  },
} as const;
