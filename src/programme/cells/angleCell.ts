/** The cell that holds the guarded joint angle: of the three there are, a programme has that of its protocol. */
import { JOINT_ANGLES, type JointAngle } from '../../mechanics/jointAngle.ts';
import { COLUMN_WORDS } from '../phrases/dose.ts';
import { CELLS, type Cell, type CellName } from '../programme.ts';

export const ANGLE_CELLS = JOINT_ANGLES.map((angle) => `${angle}Deg` as const);
type AngleCell = `${JointAngle}Deg`;

function isAngleCell(name: CellName): name is AngleCell {
  return (ANGLE_CELLS as readonly CellName[]).includes(name);
}

/** The cells of a programme whose protocol is guarded by this angle, in the order of CELLS. */
export function cellsFor(angle: JointAngle): readonly CellName[] {
  return CELLS.filter((cell) => !isAngleCell(cell) || cell === `${angle}Deg`);
}

/** Headings of those cells; the others' are never asked for, since a table names what its cells hold. */
export function columnsFor(angle: JointAngle): Readonly<Record<CellName, string>> {
  const headings = cellsFor(angle).map((cell) => [cell, COLUMN_WORDS[cell]]);
  return Object.fromEntries(headings) as Record<CellName, string>;
}

/** That cell of one exercise. */
export function angleCellIn(cells: readonly Cell[]): Cell | undefined {
  return cells.find(({ cell }) => isAngleCell(cell));
}
