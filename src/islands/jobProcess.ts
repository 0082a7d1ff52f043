/** What the coil of the job does to the air, for a chart: both readings and how sure they are, the load, the blower's step. */
import { computed } from '@preact/signals';
import { blowerHere } from '~/calc/blowerHere.ts';
import type { ChartProcess } from '~/charts/moistAir/process.ts';
import type { ReadingUncertainty } from '~/charts/moistAir/region.ts';
import { assessment, interpreted, source } from './store.ts';

/** A limit is the half-width of a rectangular distribution; its standard uncertainty is that over the root of three (JCGM 100, 4.3.7). */
const standard = (limit: number) => limit / Math.sqrt(3);

/** `null` until both states of the air are there. */
export const jobProcess = computed((): ChartProcess | null => {
  const { entering, leaving, measured } = assessment.value;
  if (!entering.ok || !leaving.ok) return null;
  const load = measured.ok ? measured.value : null;
  const { test } = interpreted.value;
  const blower = load && { heat: blowerHere(test, load.dryAirFlow), place: test.blower.place };
  // A link tells no limits, and what its figures are is not known: regions would be made up.
  const uncertainty = source.value === 'visitor' ? {} : { entering: ofProbe(), leaving: ofProbe() };
  return { entering: entering.value, leaving: leaving.value, load, blower, uncertainty };
});

/** How sure each of the two readings of a probe is; both probes have the same limits. */
function ofProbe(): ReadingUncertainty {
  const { entering, probeLimits } = interpreted.value.test;
  const dryBulb = standard(probeLimits.dryBulb);
  return entering.wetBulb === null
    ? { dryBulb, humidity: standard(probeLimits.relativeHumidity), measure: 'relativeHumidity' }
    : { dryBulb, humidity: standard(probeLimits.wetBulb), measure: 'wetBulb' };
}
