/** The heaviest weight that anybody writes down or asks about, kilograms; more is a slip of the pen [choice]. */
export const HEAVIEST_WRITTEN_KG = 300;
