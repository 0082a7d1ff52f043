import { LineDrawing } from '~/charts/lines/LineDrawing.tsx';
import { Ledger } from '~/parts/Ledger.tsx';
import { lineDrawing, lineResults } from '~/words/en/lineSetResults.ts';
import { amountOf } from '../fields.ts';
import { isDesk, lines } from './model.ts';

/** The two units and what joins them, as a drawing, a sentence and a table. */
export function Drawing() {
  const run = lines.value.input?.run;
  if (!run) return null;
  const { length, lift, fittings, vaporTube, liquidTube } = run;
  const said = amountOf('lineSet.length', length);
  const height = amountOf('lineSet.lift', Math.abs(lift));
  const stands = lift === 0 ? lineDrawing.level : lift > 0 ? lineDrawing.up(height) : lineDrawing.down(height);
  const [vapor, liquid] = [`${vaporTube}\u00a0in`, `${liquidTube}\u00a0in`];
  const { rows } = lineDrawing;
  const cells = [
    { name: rows.length, text: said },
    { name: rows.fittings, text: amountOf('lineSet.fittings', fittings) },
    { name: rows.lift, text: amountOf('lineSet.lift', lift) },
    { name: rows.vapor, text: vapor },
    { name: rows.liquid, text: liquid },
  ].map(({ name, text }) => {
    const [number = '', unit = ''] = text.split('\u00a0');
    return { name, number, unit };
  });
  return (
    <>
      <LineDrawing
        lift={lift / length}
        width={isDesk.value ? 600 : 358}
        words={{
          outdoor: lineDrawing.outdoor,
          indoor: lineDrawing.indoor,
          vapor: lineDrawing.vapor(vapor),
          liquid: lineDrawing.liquid(liquid),
          length: said,
          height: lift === 0 ? '' : height,
          summary: lineDrawing.summary(said, vapor, liquid, stands),
        }}
      />
      <p class="answer-note">{lineDrawing.notToScale}</p>
      <details class="fold">
        <summary>{lineResults.table}</summary>
        <Ledger caption={lineResults.table} lines={cells} />
      </details>
    </>
  );
}
