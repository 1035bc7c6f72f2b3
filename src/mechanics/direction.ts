/** How a repetition goes. */

/** Which way the body goes in the first half of a repetition. */
export type Direction = 'up' | 'down' | 'out';

/** Where a repetition rests: at its turning point, or back where it began. Always the gentle one of the two. */
export type Pause = 'turn' | 'return';
