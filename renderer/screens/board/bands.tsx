// Rows that do not fit on one page of paper: each page has a band of whole rows of the same drawing under the
// days, so that no row is cut and every line that leaves a band goes on in the next. On screen it does nothing.
import type { ReactNode } from 'react';
import { useIsPrinting } from '../../parts/printing.ts';
import { BandRange } from './band-range.ts';

/** What a sheet of A4, and so of Letter, holds of rows between the title block and the chart's foot. */
export const rowsPx = 420;
/** The same without the foot, which then begins the next page. */
const bandPx = 560;

export function Bands(props: {
  readonly rowHeight: number;
  readonly count: number;
  /** The days; they stand over the first band already. */
  readonly head: ReactNode;
  readonly children: ReactNode;
}): ReactNode {
  const { rowHeight, count } = props;
  const isPrinting = useIsPrinting();
  const perBand = Math.max(1, Math.floor(bandPx / rowHeight));
  if (!isPrinting || count <= perBand) return props.children;
  return Array.from({ length: Math.ceil(count / perBand) }, (_, index) => {
    const first = index * perBand;
    const rows = Math.min(perBand, count - first);
    const band = { first, last: first + rows - 1, top: first * rowHeight, height: rows * rowHeight };
    return (
      <div key={index} className="board-band-page">
        {index === 0 ? null : props.head}
        <div className="board-band" style={{ height: band.height }}>
          <div style={{ marginTop: -band.top }}>
            <BandRange value={band}>{props.children}</BandRange>
          </div>
        </div>
      </div>
    );
  });
}
