// How many stops and cautions something has, in words: "1 stop, 2 cautions".
import type { ReactNode } from 'react';

function words(count: number, word: string): string[] {
  return count === 0 ? [] : [`${count} ${word}${count === 1 ? '' : 's'}`];
}

export function severityText(counts: { readonly stops: number; readonly cautions: number }): string {
  return [...words(counts.stops, 'stop'), ...words(counts.cautions, 'caution')].join(', ');
}

export function Severities(props: { readonly stops: number; readonly cautions: number }): ReactNode {
  const { stops, cautions } = props;
  if (stops + cautions === 0) return <span className="soft">no stop, no caution</span>;
  return (
    <>
      {stops === 0 ? null : <span className="short-word">{severityText({ stops, cautions: 0 })}</span>}
      {stops > 0 && cautions > 0 ? ', ' : null}
      {cautions === 0 ? null : (
        <span className="caution-word-ink">{severityText({ stops: 0, cautions })}</span>
      )}
    </>
  );
}
