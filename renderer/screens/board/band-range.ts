// Which rows a band of the printed board has, for what is drawn inside it; null where there are no bands.
import { createContext } from 'react';

export interface Band {
  /** Indexes of its first and last row. */
  readonly first: number;
  readonly last: number;
  /** Pixels from the top of the whole drawing. */
  readonly top: number;
  readonly height: number;
}

export const BandRange = createContext<Band | null>(null);
