/** What the hatched regions on an air chart are. */
export const regionWords = {
  hatched: (limits: string) => `Hatched: where the air is, 95 times in 100, with probes that read within ${limits}.`,
  limits: (temperature: string, humidity: string) => `±${temperature} and ±${humidity}`,
  assumed: (limits: string) => `${limits} (assumed limits)`,
} as const;
