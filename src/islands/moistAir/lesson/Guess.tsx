import { useState } from 'preact/hooks';
import { moistAir } from '~/calc/moistAir.ts';
import { formatNumber } from '~/job/format.ts';
import { read } from '~/job/read.ts';
import type { Cell } from '~/job/states.ts';
import type { QuantityKey } from '~/job/types.ts';
import { fromSi } from '~/job/units.ts';
import { Check } from '~/parts/Echo.tsx';
import { lesson } from '~/words/en/moistAirLesson.ts';
import { predict } from '~/words/en/predict.ts';
import { CellField } from '../../CellField.tsx';
import { shownUnit } from '../../fields.ts';
import { ShowKeys } from '../../predict/ShowKeys.tsx';
import { pressure } from '../points.ts';
import { airOfFigure, guess, shown, texts } from './model.ts';
import { figureOf, type Question } from './questions.ts';

type Field = 'dryBulb' | 'relativeHumidity' | 'wetBulb';

/** The ordinary control to say it with, and the key that shows. */
export function Guess({ of }: { of: Question }) {
  const [missing, miss] = useState(false);
  const figure = figureOf[of.kind];
  const fields: readonly Field[] = figure === null ? ['dryBulb', 'relativeHumidity'] : [figure];
  return (
    <form
      class="lesson-guess"
      onSubmit={(event) => {
        event.preventDefault();
        if (guess.value) shown.value = true;
        miss(!guess.value);
      }}
    >
      <p class="hint">{figure === null ? lesson.say.place : lesson.say.figure}</p>
      <div class="field-row">
        {fields.map((field) => (
          <CellField
            key={field}
            id={`guess-${field}`}
            of={keyOf(field)}
            name={lesson.guess[field]}
            cell={cellOf(field)}
            onText={(text) => {
              write(of, field, text);
              miss(false);
              return true;
            }}
          />
        ))}
      </div>
      {missing && <Check>{predict.needGuess}</Check>}
      <ShowKeys
        onWithout={() => {
          guess.value = null;
          shown.value = true;
        }}
      />
    </form>
  );
}

const keyOf = (field: Field): QuantityKey => `state.${field}`;

/** What was typed; while nothing is, the place that was tapped. */
function cellOf(field: Field): Cell {
  const key = keyOf(field);
  const unit = shownUnit(key);
  const air = guess.value;
  const text = texts.value[field] ?? (air ? formatNumber(fromSi(air[field], unit), 1) : '');
  return { text, unit, read: read(text, key, unit) };
}

function write(of: Question, field: Field, text: string): void {
  const siOf = (one: Field) => {
    const found = one === field ? read(text, keyOf(one), shownUnit(keyOf(one))) : cellOf(one).read;
    return found.state === 'read' ? found.si : null;
  };
  const now: Partial<Record<Field, string>> = { [field]: text };
  if (figureOf[of.kind] === null) {
    const other = field === 'dryBulb' ? 'relativeHumidity' : 'dryBulb';
    now[other] = cellOf(other).text;
  }
  const [si, dryBulb, relativeHumidity] = [siOf(field), siOf('dryBulb'), siOf('relativeHumidity')];
  texts.value = now;
  if (figureOf[of.kind] !== null) guess.value = si === null ? null : airOfFigure(of, si);
  else {
    guess.value =
      dryBulb === null || relativeHumidity === null
        ? null
        : moistAir({ dryBulb, relativeHumidity, pressure: pressure.value });
  }
}
