/** The cell that holds the guarded joint angle: of the three there are, a programme has that of its protocol. */
import { JOINT_ANGLES, type JointAngle } from '../../../mechanics/jointAngle.ts';
import { CELLS, type CellName } from '../../terms/cell.ts';

export const ANGLE_CELLS = JOINT_ANGLES.map((angle) => `${angle}Deg` as const);
type AngleCell = `${JointAngle}Deg`;

function isAngleCell(name: CellName): name is AngleCell {
  return (ANGLE_CELLS as readonly CellName[]).includes(name);
}

/** The cells of a programme whose protocol is guarded by this angle, in the order of CELLS. */
export function cellsFor(angle: JointAngle): readonly CellName[] {
  return CELLS.filter((cell) => !isAngleCell(cell) || cell === `${angle}Deg`);
}

/** That cell of one exercise. */
export function angleCellIn<Cell extends { readonly cell: CellName }>(
  cells: readonly Cell[],
): Cell | undefined {
  return cells.find(({ cell }) => isAngleCell(cell));
}
