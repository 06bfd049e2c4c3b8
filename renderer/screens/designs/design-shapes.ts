// The core's answers as the parts of this screen name them.
import type { z } from 'zod';
import type { designDraft } from '../../../core/procedures/design-draft.ts';
import type { designRead } from '../../../core/procedures/design-read.ts';
import type { designList } from '../../../core/procedures/design-list.ts';

export type DesignDetail = z.output<typeof designRead.output>;
export type DesignSummary = z.output<typeof designList.output>['designs'][number];
/** What a gang is drawn and listed from, whether it is stored, saved once or still being edited. */
export type ShownTakeOff = Omit<
  z.output<typeof designDraft.output>,
  'origin' | 'symmetrical' | 'sameAs' | 'mirrorFindings'
>;
export type TakeoffLine = DesignDetail['lines'][number];
export type Reason = TakeoffLine['because'][number];
export type Finding = DesignDetail['findings'][number];
export type Place = Reason['where'];

/** A point of the gang in nanometres from its lower left corner, seen from the back. */
export interface PointNm {
  readonly xNm: number;
  readonly yNm: number;
}

export interface RectangleNm extends PointNm {
  readonly widthNm: number;
  readonly heightNm: number;
}

export type Severity = Finding['severity'];
