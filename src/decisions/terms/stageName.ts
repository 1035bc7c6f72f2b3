/** The numbered stages of a protocol, and the one that keeps what was won. */
export type StageName = 1 | 2 | 3 | 4 | 'keepGoing';
