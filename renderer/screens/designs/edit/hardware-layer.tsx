// Joints, locks, rails, bolts and tie holes as the last answer of the core has them, where they stood then.
import { memo, type ReactNode, useMemo } from 'react';
import type { Mark } from '../elevation-marks.ts';
import type { Scale } from '../elevation-view.ts';
import { hardwarePaths } from '../hardware-paths.ts';
import type { Layer } from '../layers.ts';

export const HardwareLayer = memo(function HardwareLayer(props: {
  readonly marks: readonly Mark[];
  readonly scale: Scale;
  readonly hidden: ReadonlySet<Layer>;
  readonly hatch: string;
}): ReactNode {
  const { marks, scale, hidden } = props;
  const paths = useMemo(() => hardwarePaths(marks, scale), [marks, scale]);
  return (
    <g className="hardware">
      {hidden.has('rails') ? null : (
        <>
          <path className="rail" d={paths.rails.both} />
          <path className="rail rail-picking" d={paths.rails.picking} />
          <path className="rail-placing" d={paths.rails.placing} fill={`url(#${props.hatch})`} />
          <path className="rail-bolt" d={paths.bolts} />
        </>
      )}
      {hidden.has('joints') ? null : (
        <>
          <path className="joint-line" d={paths.joints} />
          <path className="lock-path" d={paths.locks} />
          <path className="lock-claws" d={paths.adjustable} />
        </>
      )}
      {hidden.has('holes') ? null : <path className="hole" d={paths.holes} />}
    </g>
  );
});
