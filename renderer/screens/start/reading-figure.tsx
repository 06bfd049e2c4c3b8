// One pour as the board draws it, with each part named: whoever has read this can read the board.
import type { ReactNode } from 'react';

const parts = [
  { x: 0, width: 84, name: 'set side A', kind: 'set', nameX: 42 },
  // Its name stands clear of the day line in the middle of it.
  { x: 84, width: 200, name: 'steel', kind: 'wait', nameX: 142 },
  { x: 284, width: 110, name: 'closed', kind: 'closed', nameX: 339 },
  { x: 400, width: 140, name: 'curing', kind: 'cure', nameX: 470 },
  { x: 540, width: 60, name: 'strip', kind: 'strip', nameX: 570 },
] as const;

export function ReadingFigure(): ReactNode {
  return (
    <svg
      className="reading row-chart"
      viewBox="-8 0 776 100"
      role="img"
      aria-label="A pour on the board: side A is set, then steel, side B closes it, the pour ends at 14:00, it cures, it is stripped, and the gangs fly on to the next pour"
    >
      <path className="day-line" d="M-8 90.5H768" />
      {[0, 200, 400, 600].map((x) => (
        <path key={x} className="day-line" d={`M${x + 0.5} 8V90`} />
      ))}
      {parts.map((part) => (
        <g key={part.name}>
          <text x={part.nameX} y="22" textAnchor="middle">
            {part.name}
          </text>
          {part.kind === 'wait' ? (
            <path className="bar-wait" d={`M${part.x} 41h${part.width}`} />
          ) : (
            <rect className={`bar-${part.kind}`} x={part.x} y={34} width={part.width} height="14" />
          )}
        </g>
      ))}
      <rect className="bar-set" x="200" y="60" width="84" height="14" />
      <text x="242" y="88" textAnchor="middle">
        close side B
      </text>
      <rect className="bar-closed" x="284" y="60" width="110" height="14" />
      <rect className="bar-cure" x="400" y="60" width="140" height="14" />
      <rect className="bar-strip" x="540" y="60" width="60" height="14" />
      <rect className="pour-mark" x="394" y="28" width="7" height="52" />
      <text className="hour" x="388" y="58" textAnchor="end">
        14:00
      </text>
      <path className="reading-link" d="M600 41H648V67H676" />
      <text className="strip-words" x="682" y="45">
        flies on
      </text>
      <text className="strip-words" x="682" y="71">
        to the next
      </text>
    </svg>
  );
}
