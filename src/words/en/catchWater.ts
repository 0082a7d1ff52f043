/** The water caught from the drain, against the water that two humidity probes see leave the air. */
export const catchWater = {
  lead: 'Weighed water says more about the drying than two humidity probes do.',
  wait: 'Let it drip for twenty minutes first: the coil and the pan have to be wet all over. Then catch every drain for half an hour or more, and note the readings over the same time.',
  never:
    'Catch it at the end of the drain, outside the unit. Never reach into the unit for it: blower, live parts and sharp fins are near the pan. Put plug, trap and float switch back as they were.',
  rough: 'Good to about 10\u00a0% at best: what stays in pan and pipe changes (a judgement, no source).',
  agrees: (caught: string, probes: string) => `Caught ${caught}, by the probes ${probes}: they agree.`,
  less: (caught: string, probes: string) =>
    `Caught ${caught}, by the probes ${probes}: less than the probes say, by more than both can err. Not steady yet, a second drain, water blown past the pan, or a humidity probe that reads wrong.`,
  more: (caught: string, probes: string) =>
    `Caught ${caught}, by the probes ${probes}: more than the probes say, by more than both can err. Damp air drawn in between the probes, water left from before, or a humidity probe that reads wrong.`,
  between: (low: string, high: string) => `${low} to ${high}`,
  latent: (amount: string) => `By the water caught, the drying (latent) is ${amount}.`,
} as const;
