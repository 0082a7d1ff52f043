import { notSteadyBefore, tick, tickedAt, type VisitItem, visitItems } from '~/job/visit.ts';
import { visitNames, visitWords as words } from '~/words/en/visit.ts';
import { clock } from '../show.ts';
import { edit, job } from '../store.ts';

/** The list of the visit: what was done when, and before when it is not steady. */
export function Visit() {
  return (
    <div class="visit">
      <p class="label quiet">{words.lead}</p>
      <ul>
        {visitItems.map((item) => (
          <Item key={item} of={item} />
        ))}
      </ul>
    </div>
  );
}

function Item({ of: item }: { of: VisitItem }) {
  const at = tickedAt(job.value, item);
  const from = item === 'steady' && at === null ? notSteadyBefore(job.value) : null;
  return (
    <li>
      <label>
        <input
          type="checkbox"
          checked={at !== null}
          onChange={(event) => {
            // What is only to be looked at stays as it is.
            if (!edit(...tick(job.value, item, new Date().toISOString()))) event.currentTarget.checked = at !== null;
          }}
        />
        <span>
          {visitNames[item]}
          {from !== null && words.notBefore(clock(from))}
        </span>
        <span class="number">{at !== null && clock(at)}</span>
      </label>
    </li>
  );
}
