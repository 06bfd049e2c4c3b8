// The patterns of the drawings, once in the page: curing dots, stripping hatch, days off, pieces short.
// Patterns and not only colours, so that a photocopy or a colour-blind eye reads the same.
import type { ReactNode } from 'react';

export function Patterns(): ReactNode {
  return (
    <svg className="patterns" width="0" height="0" aria-hidden="true">
      <defs>
        <pattern id="dots" width="6" height="6" patternUnits="userSpaceOnUse">
          <circle cx="1.5" cy="1.5" r="1" className="pattern-mark" />
          <circle cx="4.5" cy="4.5" r="1" className="pattern-mark" />
        </pattern>
        <pattern id="hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <rect width="2" height="5" className="pattern-mark" />
        </pattern>
        <pattern id="off" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
          <rect width="1" height="7" className="pattern-rule" />
        </pattern>
        <pattern id="short" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
          <rect width="3" height="6" className="pattern-short" />
        </pattern>
      </defs>
    </svg>
  );
}
