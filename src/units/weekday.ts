export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

/** A day of the week, Monday first (ISO 8601 order). */
export type Weekday = (typeof WEEKDAYS)[number];
