import { LossScale } from '~/charts/lines/LossScale.tsx';
import { Check } from '~/parts/Echo.tsx';
import { lineCautions, lineResults, lowLoad, oilWords, viscosityEstimated } from '~/words/en/lineSetResults.ts';
import { Drawing } from './Drawing.tsx';
import { LiquidLedger, VaporLedger } from './Ledgers.tsx';
import { ends, found, isDesk, share } from './model.ts';
import { Working } from './Working.tsx';

/** What stands below the sentences once something is worked out. */
export function Results() {
  const result = found.value;
  if (!result?.vapor) return null;
  const { factor, liquid, oilReturn, cautions } = result;
  const said = cautions.flatMap((code) => lineCautions[code] ?? []);
  return (
    <>
      {factor && (
        <section class="answer">
          <LossScale
            {...factor}
            width={isDesk.value ? 600 : 358}
            words={{ rated: lineResults.asRated, summary: lineResults.scale(share(factor.factor), ...ends(factor)) }}
          />
        </section>
      )}
      {said.length > 0 && (
        <section>
          {said.map((words) => (
            <Check key={words}>{words}</Check>
          ))}
        </section>
      )}
      <section>
        <h2>{lineResults.drawing}</h2>
        <Drawing />
      </section>
      <section>
        <h2>{lineResults.vapor}</h2>
        <VaporLedger />
        {cautions.includes('viscosityEstimated') && <p class="answer-note">{viscosityEstimated}</p>}
      </section>
      <section>
        <h2>{lineResults.oil}</h2>
        <p>
          {oilReturn && oilWords[oilReturn]} {lowLoad}
        </p>
      </section>
      <section>
        <h2>{lineResults.liquid}</h2>
        {liquid && <p>{liquid.flashes ? lineResults.flashes : lineResults.holds}</p>}
        <LiquidLedger />
      </section>
      <section class="folds">
        <Working />
      </section>
    </>
  );
}
