// Where locks are drawn is the same on screen and on paper.
export { fillerOfJoint, locksAlong } from '../../../core/sheets/joint-marks.ts';
