// The hand of a design as people say it.
import type { DesignSummary } from './design-shapes.ts';

export const handWords: Readonly<Record<DesignSummary['hand'], string>> = {
  left: 'left',
  right: 'right',
  symmetrical: 'either',
};
