import { useEffect, useRef } from 'preact/hooks';
import { predict } from '~/words/en/predict.ts';

interface Props {
  readonly guess: string | null;
  readonly answer: string;
  readonly why: string;
}

/** Guess and result in one sentence, and why. It takes the focus, which the key that showed it has lost. */
export function Result({ guess, answer, why }: Props) {
  const said = useRef<HTMLParagraphElement>(null);
  useEffect(() => said.current?.focus(), []);
  return (
    <div class="lesson-result">
      <p ref={said} tabIndex={-1}>
        <b>{guess === null ? predict.itIs(answer) : predict.youSaid(guess, answer)}</b>
      </p>
      <p>{why}</p>
    </div>
  );
}
