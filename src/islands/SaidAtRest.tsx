import { useEffect, useState } from 'preact/hooks';

/** What a hand that moves over a drawing reads, spoken once it rests. */
export function SaidAtRest({ words }: { words: string }) {
  const [said, say] = useState('');
  useEffect(() => {
    if (words === '') return say('');
    const timer = setTimeout(() => say(words), 500);
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <p class="spoken" role="status">
      {said}
    </p>
  );
}
