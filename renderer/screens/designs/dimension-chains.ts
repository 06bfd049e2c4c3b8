// The dimensions of an elevation are the same on screen and on paper.
export {
  type DimensionChains,
  dimensionChains,
  type Stretch,
} from '../../../core/sheets/dimension-chains.ts';
